import fc from 'fast-check';

/**
 * Properties are tried on the same cases in every run, so that a change alone decides whether the tests pass.
 * `EDGEWISE_SEED=random` tries new ones, and a number the ones of that seed.
 */
const asked = process.env.EDGEWISE_SEED ?? '';
const seed = asked === 'random' ? undefined : asked === '' ? 20_261_125 : Number(asked);

fc.configureGlobal(seed === undefined ? {} : { seed });
