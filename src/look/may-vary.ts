/**
 * What an approval picture cannot promise, to stand beside it. The ranges are common practice, no source: pitch of a
 * hand-twisted bar ± 5–15 %, uneven forging 1–4 % of the thickness by hand.
 */
export const MAY_VARY: readonly string[] = [
  'Drawn from the planned steps and one seed of unevenness: the real bar wanders in its own way.',
  'By hand, heights wander by 1 to 4 % of the thickness and the pitch of a twist by 5 to 15 %; lines shift with them.',
  'Which steel stays bright is known; how dark the other goes depends on the acid, its strength and the hardening.',
]
