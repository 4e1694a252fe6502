'use strict';

async function check() {
  const { makeReady } = await import('../tools/setup/ready.js');
  await makeReady({ page: true });
  const { runChecks } = await import('../tools/checks/run.js');
  process.exitCode = await runChecks();
}

check().catch((error) => {
  console.error(error.message);
  console.log('0 passed, 1 failed');
  process.exit(1);
});
