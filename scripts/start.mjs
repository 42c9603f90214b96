/** `npm start`: reckons two vehicles of the Reedmere scenario, one that holds and one that fails on purpose. */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const command = fileURLToPath(new URL('../packages/cli/dist/main.js', import.meta.url));
const examples = ['sedge', 'teasel'];

for (const name of examples) {
  const file = `examples/reedmere/${name}.json`;
  console.log(`\n$ longrein reckon ${file}\n`);
  const { status } = spawnSync(process.execPath, [command, 'reckon', file], {
    stdio: 'inherit',
    cwd: fileURLToPath(new URL('..', import.meta.url)),
  });
  if (status !== 0 && status !== 1) process.exit(status ?? 2);
}
console.log('\nYour own vehicle:  npm run longrein -- new my-toy.json   then   npm run longrein -- reckon my-toy.json');
