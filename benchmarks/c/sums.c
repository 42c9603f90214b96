/*
 * The arithmetic of some sixty sums of one vehicle, written by hand: what the reckoning is measured against.
 *
 * columns.h, made when the benchmark runs, names the given columns (IN_…), the worked-out ones (OUT_…) and the tabulated
 * figures (the same ones the sums take), and says whether the wires, which solve for a temperature, are among them (SOLVES). Nothing here checks a range or an unknown; otherwise it computes the same numbers.
 *
 * usage: sums <columns file> <results file> <rows> <runs>; prints the nanoseconds of each run.
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

#include "columns.h"

#define GRAVITY 9.80665
#define GAS_CONSTANT 8.31446261815324
#define STEFAN_BOLTZMANN 5.670374419e-8
#define COPPER_COEFFICIENT 0.00393
#define TWENTY_CELSIUS 293.15
#define ROOM 298.15
#define HOUR 3600.0
#define PI 3.14159265358979323846

static double copper(double r20, double t) { return r20 * (1 + COPPER_COEFFICIENT * (t - TWENTY_CELSIUS)); }
static double magnet(double k20, double t) { return k20 * (1 + MAGNET_PER_KELVIN * (t - TWENTY_CELSIUS)); }
static double loop(double length, double per_metre, double contacts) {
  return 2 * length * copper(per_metre, SERVICE) + contacts;
}
static double cold_factor(double t) { return exp((ACTIVATION_ENERGY / GAS_CONSTANT) * (1 / t - 1 / ROOM)); }
static double least(double a, double b) { return a < b ? a : b; }
static double most(double a, double b) { return a > b ? a : b; }

#if SOLVES
/* A horizontal wire in still air: Churchill and Chu 1975, air by Sutherland, grey radiation. */
static double sutherland(double t, double s) {
  double ratio = t / 273;
  return ratio * sqrt(ratio) * (273 + s) / (t + s);
}

static double wire_loss(double surface, double ambient, double diameter) {
  double t = (surface + ambient) / 2;
  double mu = 1.716e-5 * sutherland(t, 110.4);
  double k = 0.0241 * sutherland(t, 194);
  double nu = mu * GAS_CONSTANT * t / (101325 * 0.0289644);
  double pr = mu * 1007 / k;
  double ra = GRAVITY * fabs(surface - ambient) * pr / (t * nu * nu) * diameter * diameter * diameter;
  double root = sqrt(0.559 / pr);
  double term = 1 + root * sqrt(sqrt(sqrt(root)));
  double nusselt = 0.6 + 0.387 * cbrt(sqrt(ra)) / exp(8.0 / 27 * log(term));
  double around = PI * diameter;
  double hot = surface * surface, cold = ambient * ambient;
  return around * nusselt * nusselt * k / diameter * (surface - ambient) +
         0.9 * STEFAN_BOLTZMANN * around * (hot * hot - cold * cold);
}

/* False position with the rule of Anderson and Björck, as the law of the wire solves it. */
static double wire_rise(double current, double ambient, double per_metre, double area, double outer) {
  double conductor = least(sqrt(4 * area / PI), outer);
  double wall = log(outer / conductor) / (2 * PI * 0.17);
  double square = current * current * per_metre;
  double cold = square * (1 + COPPER_COEFFICIENT * (ambient - TWENTY_CELSIUS));
  double warming = square * COPPER_COEFFICIENT;
  double cooling = 1 - warming * wall;
  double a = 0, b = 473.15 - ambient, fa = -cold;
  double fb = cooling * wire_loss(473.15, ambient, outer) - cold - warming * b;
  double x = fa >= 0 ? a : b;
  int moved = 0;
  for (int i = 0; i < 100 && fa < 0 && fb > 0; i++) {
    double next = a - fa * (b - a) / (fb - fa);
    if (fabs(next - x) <= 1e-10 * fabs(next)) {
      x = next;
      break;
    }
    x = next;
    double fx = cooling * wire_loss(ambient + x, ambient, outer) - cold - warming * x;
    if (fx < 0) {
      if (moved < 0) fb *= fx / fa < 1 ? 1 - fx / fa : 0.5;
      a = x;
      fa = fx;
      moved = -1;
    } else {
      if (moved > 0) fa *= fx / fb < 1 ? 1 - fx / fb : 0.5;
      b = x;
      fb = fx;
      moved = 1;
    }
  }
  return x + wall * (cold + warming * x) / cooling;
}
#endif

/* Duty at which a motor gets a voltage and a current, with the pack sagging under the mean of all of them. */
static double duty_for(double rest, double shared, double voltage, double current) {
  double sag = shared * MOTORS * current;
  double root = rest * rest - 4 * sag * voltage;
  double duty = root >= 0 ? 2 * voltage / (rest + sqrt(root)) : INFINITY;
  return duty <= 1 ? duty : (voltage + sag) / rest;
}

#define IN(name) (in[IN_##name][i])
#define OUT(name) (out[OUT_##name][i])

static void work_out(long rows, double *const *in, double *const *out) {
  for (long i = 0; i < rows; i++) {
    /* mass */
    double wiring = 2 * IN(RUN_PACK_LENGTH) * IN(RUN_PACK_MASSPERMETRE) + IN(RUN_PACK_CONTACTMASS) +
                    2 * IN(RUN_BRIDGE_LENGTH) * IN(RUN_BRIDGE_MASSPERMETRE) + IN(RUN_BRIDGE_CONTACTMASS) +
                    MOTORS * (2 * IN(RUN_MOTOR_LENGTH) * IN(RUN_MOTOR_MASSPERMETRE) + IN(RUN_MOTOR_CONTACTMASS)) +
                    2 * IN(RUN_CONVERTER_LENGTH) * IN(RUN_CONVERTER_MASSPERMETRE) + IN(RUN_CONVERTER_CONTACTMASS) +
                    2 * IN(RUN_BOARD_LENGTH) * IN(RUN_BOARD_MASSPERMETRE) + IN(RUN_BOARD_CONTACTMASS);
    double added = IN(PACK_MASS) + IN(FUSE_MASS) + IN(CONVERTER_MASS) + BRIDGES * IN(BRIDGE_MASS) +
                   IN(COMPUTER_MASS) + IN(CAMERA_MASS) + IN(MODEM_MASS) + IN(AERIAL_MASS) + IN(SERVO_MASS) +
                   IN(ENCLOSURE_MASS) + IN(FIXINGS_MASS) + wiring;
    double mass = IN(TOY_MASS) - IN(TOY_REMOVED) + added + IN(WANT_PAYLOAD);
    OUT(MASS_WIRING) = wiring;
    OUT(MASS_ADDED) = added;
    OUT(MASS_TOTAL) = mass;
    OUT(MASS_RATIO) = mass / IN(TOY_MASS);

    /* pack and wiring: resistances */
    double worn = CELLS * IN(PACK_CELLRESISTANCE) * (1 + IN(PACK_CYCLESDONE) / IN(PACK_LIFE));
    double pack = worn * cold_factor(IN(DAY_USUAL));
    double pack_cold = worn * cold_factor(IN(DAY_COLDEST));
    double pack_run = loop(IN(RUN_PACK_LENGTH), IN(RUN_PACK_RESISTANCEPERMETRE), IN(RUN_PACK_CONTACTRESISTANCE)) +
                      IN(FUSE_RESISTANCE);
    double bridge_run =
        loop(IN(RUN_BRIDGE_LENGTH), IN(RUN_BRIDGE_RESISTANCEPERMETRE), IN(RUN_BRIDGE_CONTACTRESISTANCE));
    double motor_run = loop(IN(RUN_MOTOR_LENGTH), IN(RUN_MOTOR_RESISTANCEPERMETRE), IN(RUN_MOTOR_CONTACTRESISTANCE));
    double converter_run =
        loop(IN(RUN_CONVERTER_LENGTH), IN(RUN_CONVERTER_RESISTANCEPERMETRE), IN(RUN_CONVERTER_CONTACTRESISTANCE));
    double board_run = loop(IN(RUN_BOARD_LENGTH), IN(RUN_BOARD_RESISTANCEPERMETRE), IN(RUN_BOARD_CONTACTRESISTANCE));
    OUT(PACK_RESISTANCE) = pack;
    OUT(PACK_RESISTANCECOLD) = pack_cold;
    OUT(WIRING_PACK_RESISTANCE) = pack_run;
    OUT(WIRING_BRIDGE_RESISTANCE) = bridge_run;
    OUT(WIRING_MOTOR_RESISTANCE) = motor_run;
    OUT(WIRING_CONVERTER_RESISTANCE) = converter_run;
    OUT(WIRING_BOARD_RESISTANCE) = board_run;

    /* duty and drive */
    double resistance = IN(DRIVE_RESISTANCE), idle = IN(DRIVE_NOLOADCURRENT), full = IN(PACK_FULL);
    double threshold = IN(BRIDGE_THRESHOLD), slope = IN(BRIDGE_SLOPE), duty = IN(DUTY_APPLIED);
    double ratio = IN(DRIVE_RATIO), wheel = IN(TOY_WHEELDIAMETER), efficiency = IN(GEAR_EFFICIENCY);
    double speed = IN(WANT_SPEED), rest = IN(PACK_RESTRESERVE), nominal = IN(PACK_NOMINAL);
    double constant = (IN(MOTOR_NOLOADVOLTAGE) - resistance * idle) / IN(MOTOR_NOLOADSPEED);
    double own = motor_run + SHARING * slope;
    double shared = pack + pack_run + bridge_run, shared_cold = pack_cold + pack_run + bridge_run;
    double stall = most(0, duty * full - threshold) / (resistance + own + duty * duty * MOTORS * shared);
    double stall_torque = most(0, constant * (stall - idle));
    OUT(DUTY_CEILING) = least(1, (IN(MOTOR_RATEDVOLTAGE) + threshold + slope * SHARING * idle) / full);
    OUT(DUTY_MOTORVOLTAGE) = most(0, duty * full - (threshold + slope * SHARING * idle));
    OUT(DRIVE_CONSTANT) = constant;
    OUT(DRIVE_STALLCURRENT) = stall;
    OUT(DRIVE_STALLTORQUE) = stall_torque;
    OUT(DRIVE_WHEELFORCESTALL) = MOTORS * efficiency * ratio * stall_torque / (wheel / 2);

    double climb = IN(WANT_SLOPE), rolling = IN(GROUND_ROLLINGWORST);
    double force_level = mass * GRAVITY * IN(GROUND_ROLLING);
    double force_climb = mass * GRAVITY * (rolling * cos(climb) + sin(climb));
    double lever = wheel / (2 * ratio * efficiency * MOTORS);
    double k_level = magnet(constant, MAGNETS_LEVEL), k_climb = magnet(constant, MAGNETS_CLIMB);
    double r_level = copper(resistance, WINDING_LEVEL), r_climb = copper(resistance, WINDING_CLIMB);
    double current_level = idle + force_level * lever / k_level;
    double current_climb = idle + force_climb * lever / k_climb;
    double drop_level = threshold + slope * SHARING * current_level;
    double drop_climb = threshold + slope * SHARING * current_climb;
    double voltage_level = current_level * r_level + k_level * speed * 2 * ratio / wheel;
    double voltage_climb = current_climb * r_climb + k_climb * speed * 2 * ratio / wheel;
    double duty_climb = duty_for(rest, shared_cold, drop_climb + current_climb * motor_run + voltage_climb, current_climb);
    double left_top = duty * (nominal - shared * MOTORS * duty * current_level) - threshold - (r_level + own) * current_level;
    double left_climb =
        duty * (rest - shared_cold * MOTORS * duty * current_climb) - threshold - (r_climb + own) * current_climb;
    double speed_climb = most(0, left_climb) / k_climb * (wheel / 2) / ratio;
    OUT(DRIVE_FORCELEVEL) = force_level;
    OUT(DRIVE_FORCECLIMB) = force_climb;
    OUT(DRIVE_TORQUECRUISE) = force_level * lever;
    OUT(DRIVE_TORQUECLIMB) = force_climb * lever;
    OUT(DRIVE_CURRENTCRUISE) = current_level;
    OUT(DRIVE_CURRENTCLIMB) = current_climb;
    OUT(BRIDGE_CHANNELCRUISE) = SHARING * current_level;
    OUT(BRIDGE_CHANNELCLIMB) = SHARING * current_climb;
    OUT(BRIDGE_DROPCRUISE) = drop_level;
    OUT(BRIDGE_DROPCLIMB) = drop_climb;
    OUT(DRIVE_VOLTAGECRUISE) = voltage_level;
    OUT(DRIVE_DUTYCRUISE) = (voltage_level + drop_level + motor_run * current_level) / nominal;
    OUT(DRIVE_DUTYCLIMB) = duty_climb;
    OUT(DRIVE_POWERCRUISE) = MOTORS * voltage_level * current_level;
    OUT(DRIVE_SPEEDCLIMB) = speed_climb;
    OUT(DRIVE_TOPSPEED) = most(0, left_top) / k_level * (wheel / 2) / ratio;
    OUT(DRIVE_POWERCLIMB) =
        MOTORS * current_climb * (current_climb * r_climb + k_climb * least(speed, speed_climb) * 2 * ratio / wheel);

    double periods = resistance / (IN(MOTOR_INDUCTANCE) * IN(SET_FREQUENCY));
    double half = -expm1(-0.5 * periods);
    double ripple = full / resistance * half * half / -expm1(-periods);
    OUT(BRIDGE_RIPPLE) = ripple;
    OUT(BRIDGE_RIPPLEPEAK) = SHARING * current_climb + SHARING * ripple / 2;

    /* supply */
    double output = IN(CONVERTER_OUTPUTVOLTAGE);
    double peak = IN(COMPUTER_PEAKPOWER) + IN(CAMERA_POWER) + IN(MODEM_BURSTPOWER) + IN(SUPPLY_SERVOSTALL) * output;
    double input_peak = peak / IN(CONVERTER_EFFICIENCY);
    double current_peak = peak / output;
    double needed = most(IN(CONVERTER_INPUTMIN), output + IN(CONVERTER_HEADROOM));
    double at_board = output - current_peak * board_run, brown_out = IN(COMPUTER_BROWNOUT);
    OUT(SUPPLY_LOADPEAK) = peak;
    OUT(SUPPLY_INPUTPEAKPOWER) = input_peak;
    OUT(SUPPLY_CURRENTPEAK) = current_peak;
    OUT(SUPPLY_INPUTNEEDED) = needed + converter_run * input_peak / needed;
    OUT(SUPPLY_BOARDVOLTAGE) = at_board;
    OUT(SUPPLY_HOLDUP) = at_board > brown_out ? IN(CONVERTER_OUTPUTCAPACITANCE) *
                                                    (at_board * at_board - brown_out * brown_out) / (2 * peak)
                                              : 0;

    /* pack in use */
    double stand = IN(PACK_CURRENTSTAND), moving = IN(WANT_MOVING);
    double capacity = IN(PACK_CAPACITY) * IN(PACK_CAPACITYSHARE);
    double pack_climb = stand + least(duty_climb, duty) * MOTORS * current_climb;
    double pack_stall = MOTORS * duty * stall + stand;
    double mean = moving * IN(PACK_CURRENTCRUISE) + (1 - moving) * stand;
    OUT(PACK_REALCAPACITY) = capacity;
    OUT(PACK_CURRENTCLIMB) = pack_climb;
    OUT(PACK_CURRENTSTALL) = pack_stall;
    OUT(PACK_CURRENTMEAN) = mean;
    OUT(PACK_RATECLIMB) = pack_climb * HOUR / capacity;
    OUT(PACK_RATESTALL) = pack_stall * HOUR / capacity;
    OUT(PACK_VOLTAGECLIMB) = rest - pack_climb * pack_cold;
    OUT(PACK_POWER) = mean * nominal;

    /* wiring */
    double at_bridge = most(0, pack_climb - stand);
    double at_motor = sqrt(current_climb * current_climb + ripple * ripple / 12);
    double at_converter = input_peak / rest;
    double drop = pack_climb * pack_run + at_bridge * bridge_run + at_motor * motor_run;
    OUT(WIRING_PACK_CURRENT) = pack_climb;
    OUT(WIRING_BRIDGE_CURRENT) = at_bridge;
    OUT(WIRING_MOTOR_CURRENT) = at_motor;
    OUT(WIRING_CONVERTER_CURRENT) = at_converter;
    OUT(WIRING_BOARD_CURRENT) = current_peak;
    OUT(WIRING_CONTACTUSE) =
        most(pack_climb / IN(RUN_PACK_CONTACTCURRENTMAX),
             most(at_bridge / IN(RUN_BRIDGE_CONTACTCURRENTMAX),
                  most(at_motor / IN(RUN_MOTOR_CONTACTCURRENTMAX),
                       most(at_converter / IN(RUN_CONVERTER_CONTACTCURRENTMAX),
                            current_peak / IN(RUN_BOARD_CONTACTCURRENTMAX)))));
    OUT(WIRING_DROPCLIMB) = drop;
    OUT(WIRING_DROPSHARE) = drop / nominal;

#if SOLVES
    double air = IN(DAY_HOTTEST), inside = least(IN(HEAT_LOCALAIR), 373);
    double of_pack =
        wire_rise(pack_climb, air, IN(RUN_PACK_RESISTANCEPERMETRE), IN(RUN_PACK_AREA), IN(RUN_PACK_DIAMETER));
    double of_bridge =
        wire_rise(at_bridge, inside, IN(RUN_BRIDGE_RESISTANCEPERMETRE), IN(RUN_BRIDGE_AREA), IN(RUN_BRIDGE_DIAMETER));
    double of_motor =
        wire_rise(at_motor, air, IN(RUN_MOTOR_RESISTANCEPERMETRE), IN(RUN_MOTOR_AREA), IN(RUN_MOTOR_DIAMETER));
    double of_converter = wire_rise(at_converter, inside, IN(RUN_CONVERTER_RESISTANCEPERMETRE), IN(RUN_CONVERTER_AREA),
                                    IN(RUN_CONVERTER_DIAMETER));
    double of_board =
        wire_rise(current_peak, inside, IN(RUN_BOARD_RESISTANCEPERMETRE), IN(RUN_BOARD_AREA), IN(RUN_BOARD_DIAMETER));
    OUT(WIRING_PACK_RISE) = of_pack;
    OUT(WIRING_BRIDGE_RISE) = of_bridge;
    OUT(WIRING_MOTOR_RISE) = of_motor;
    OUT(WIRING_CONVERTER_RISE) = of_converter;
    OUT(WIRING_BOARD_RISE) = of_board;
    OUT(WIRING_HOTTEST) =
        most(air + most(of_pack, of_motor), IN(HEAT_LOCALAIR) + most(of_bridge, most(of_converter, of_board)));
#endif
  }
}

static double *columns_of(long rows, double **column, int count) {
  double *all = malloc(sizeof(double) * rows * count);
  for (int c = 0; c < count; c++) column[c] = all + c * rows;
  return all;
}

int main(int argc, char **argv) {
  if (argc != 5) return 2;
  long rows = atol(argv[3]), runs = atol(argv[4]);
  double *in[IN_COUNT], *out[OUT_COUNT];
  double *given = columns_of(rows, in, IN_COUNT), *worked_out = columns_of(rows, out, OUT_COUNT);
  FILE *from = fopen(argv[1], "rb");
  if (!given || !worked_out || !from) return 3;
  if (fread(given, sizeof(double), (size_t)rows * IN_COUNT, from) != (size_t)rows * IN_COUNT) return 4;
  fclose(from);
  for (long run = 0; run < runs; run++) {
    struct timespec start, end;
    clock_gettime(CLOCK_MONOTONIC, &start);
    work_out(rows, in, out);
    clock_gettime(CLOCK_MONOTONIC, &end);
    printf("%.0f\n", (double)(end.tv_sec - start.tv_sec) * 1e9 + (double)(end.tv_nsec - start.tv_nsec));
  }
  FILE *to = fopen(argv[2], "wb");
  if (!to || fwrite(worked_out, sizeof(double), (size_t)rows * OUT_COUNT, to) != (size_t)rows * OUT_COUNT) return 5;
  return fclose(to);
}
