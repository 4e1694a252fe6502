'use strict';

async function build() {
  const { makeReady } = await import('../tools/setup/ready.js');
  await makeReady({ page: true });
}

build().catch((error) => {
  console.error(error.message);
  process.exit(1);
});
