import { PRECISE } from './geometry-pass.ts'

/** Parts a side of a pixel in which the pattern is not smooth: as the engine's pictures. */
export const FINE = 4

/** Of a pixel's next stage: it is not looked at in this round. */
export const IDLE = -1000
const IDLING = `< ${IDLE}.0 + 0.5`

/**
 * First of a round: each pixel's place and its two sides, the pixel laid along the view onto the facet. `part` −1: the
 * whole pixel; else the part of it so numbered, and only where pixels are to be taken in parts. With 3 directions every
 * pixel is: the place alone, and how it changes along x, y and z.
 */
export function beginFragment(directions: 2 | 3): string {
  return `${PRECISE}
uniform sampler2D places;
uniform sampler2D facets;
uniform sampler2D more;
uniform vec3 viewRight;
uniform vec3 viewUp;
uniform vec3 viewOut;
uniform float pixel;
uniform vec3 stretch;
uniform int part;
layout(location = 0) out vec4 state0;
layout(location = 1) out vec4 state1;
layout(location = 2) out vec4 state2;
${directions === 3 ? 'layout(location = 3) out vec4 state3;' : ''}
void main() {
  ivec2 at = ivec2(gl_FragCoord.xy);
  vec4 place = texelFetch(places, at, 0);
  if (place.w == 0.0) discard;
  state1 = state2 = vec4(0.0);
  ${directions === 3 ? 'state3 = vec4(0.0);' : ''}
  vec3 p = place.xyz / stretch;
  ${directions === 2 ? 'if (part >= 0 && texelFetch(more, at, 0).w < 0.5) discard;' : ''}
  vec3 facet = texelFetch(facets, at, 0).xyz;
  float towards = max(dot(facet, viewOut), 1e-3);
  vec3 u = pixel * (viewRight - viewOut * (dot(viewRight, facet) / towards)) / stretch;
  vec3 v = pixel * (viewUp - viewOut * (dot(viewUp, facet) / towards)) / stretch;
  if (part >= 0) {
    vec2 s = (vec2(part % ${FINE}, part / ${FINE}) + 0.5) / ${FINE}.0 - 0.5;
    p += s.x * u + s.y * v;
    u /= ${FINE}.0;
    v /= ${FINE}.0;
  }
  ${
    directions === 2
      ? `state1.xyz = u;
  state2.xyz = v;`
      : 'state1.x = state2.y = state3.z = 1.0;'
  }
  state0 = vec4(p, 0.0);
}`
}

const STATES = `uniform sampler2D state0In;
uniform sampler2D state1In;
uniform sampler2D state2In;
uniform sampler2D state3In;`

/** One stage of the pattern: pixels whose turn it is take it, all others are handed on. */
export function stageFragment(name: string, stage: string, own: number, directions: 2 | 3): string {
  return `${PRECISE}${STATES}
uniform highp sampler2D ${name}Tables;
${stage}
layout(location = 0) out vec4 state0;
layout(location = 1) out vec4 state1;
layout(location = 2) out vec4 state2;
${directions === 3 ? 'layout(location = 3) out vec4 state3;' : ''}
void main() {
  ivec2 at = ivec2(gl_FragCoord.xy);
  state0 = texelFetch(state0In, at, 0);
  if (state0.w ${IDLING}) discard;
  state1 = texelFetch(state1In, at, 0);
  state2 = texelFetch(state2In, at, 0);
  ${directions === 3 ? 'state3 = texelFetch(state3In, at, 0);' : ''}
  if (state0.w != ${own}.0) return;
  vec3 p = state0.xyz, u = state1.xyz, v = state2.xyz, w = ${directions === 3 ? 'state3.xyz' : 'vec3(0.0)'};
  float next = state0.w, way = state2.w, seam = state1.w;
  ${name}Step(p, u, v, w, next, way, seam);
  state0 = vec4(p, next);
  state1 = vec4(u, seam);
  state2 = vec4(v, way);
  ${directions === 3 ? 'state3 = vec4(w, 0.0);' : ''}
}`
}

/** Where the round of whole pixels ended: layer coordinate and its runs; the stack, −1 no metal, −2 nothing seen. */
export const TRACE_FRAGMENT = `${PRECISE}${STATES}
layout(location = 0) out vec4 trace;
layout(location = 1) out vec4 skin;
void main() {
  ivec2 at = ivec2(gl_FragCoord.xy);
  vec4 state = texelFetch(state0In, at, 0);
  bool seen = !(state.w ${IDLING});
  trace = vec4(state.xyz, !seen ? -2.0 : state.w < -1.5 ? -2.0 - state.w : -1.0);
  skin = vec4(texelFetch(state1In, at, 0).w, 0.0, 0.0, 1.0);
}`

function meansOut(weights: number): string {
  return `layout(location = 0) out vec4 coverOut;
layout(location = 1) out vec4 moreOut;
void put(float means[${weights}], float share, float seam, float stack, float parts) {
  coverOut = vec4(means[0] * share, means[${Math.min(1, weights - 1)}] * share, seam, stack);
  moreOut = vec4(share, ${weights > 2 ? 'means[2] * share' : '0.0'}, ${weights > 3 ? 'means[3] * share' : '0.0'}, parts);
}`
}

/**
 * The mean of each weight over each pixel, times its share of metal. Where the pattern does not run straight from pixel
 * to pixel (joints, folds, creases) a pixel is left to be taken in parts, as the engine does it.
 */
export function coverFragment(measure: string, weights: number): string {
  return `${PRECISE}
uniform sampler2D traces;
uniform sampler2D skins;
uniform bool inParts;
uniform highp sampler2D steelWeights;
${measure}
${meansOut(weights)}
vec4 traceAt(ivec2 at) {
  ivec2 size = textureSize(traces, 0);
  if (any(lessThan(at, ivec2(0))) || any(greaterThanEqual(at, size))) return vec4(0.0, 0.0, 0.0, -2.0);
  return texelFetch(traces, at, 0);
}
bool breaks(vec4 a, vec4 b, bool across) {
  if (a.w < -1.5 || b.w < -1.5) return false;
  if (a.w != b.w) return true;
  return steelBend(a.xyz, b.xyz, across) > 0.0;
}
void main() {
  ivec2 at = ivec2(gl_FragCoord.xy);
  vec4 own = texelFetch(traces, at, 0);
  coverOut = vec4(0.0, 0.0, 0.0, own.w);
  moreOut = vec4(0.0);
  if (own.w < -1.5) return;
  if (inParts && (
    breaks(own, traceAt(at - ivec2(1, 0)), true) || breaks(traceAt(at + ivec2(1, 0)), own, true) ||
    breaks(own, traceAt(at + ivec2(0, 1)), false) || breaks(traceAt(at - ivec2(0, 1)), own, false))) {
    moreOut.w = 1.0;
    return;
  }
  float means[${weights}];
  steelMeans(own.xyz, own.w, means);
  put(means, own.w < 0.0 ? 0.0 : 1.0, texelFetch(skins, at, 0).x, own.w, 0.0);
}`
}

/** One part of every pixel taken in parts, added to what is there. */
export function partFragment(measure: string, weights: number): string {
  return `${PRECISE}${STATES}
uniform highp sampler2D steelWeights;
${measure}
${meansOut(weights)}
void main() {
  ivec2 at = ivec2(gl_FragCoord.xy);
  vec4 state = texelFetch(state0In, at, 0);
  if (state.w ${IDLING}) discard;
  float share = 1.0 / ${FINE * FINE}.0;
  float means[${weights}];
  steelMeans(state.xyz, -2.0 - state.w, means);
  put(means, state.w < -1.5 ? share : 0.0, share * texelFetch(state1In, at, 0).w, 0.0, 0.0);
}`
}

/** Natural logarithm of the thickness (m) that thicknesses are told against: so half a float's digits are enough. */
export const THICKNESS_TOLD = Math.log(1e-4)

/**
 * How the metal was worked, a pixel or a part of it: logarithm of the thickness of the sheet it lies in and how far it
 * was strained, both times the share of the pixel, and that share. The
 * strain is Hencky's equivalent √(2/3 Σ ln² λ), the stretches λ from the eigenvalues of what the pull-back's rates and
 * their inverse make; the greatest eigenvalue of a symmetric matrix by the cosine of a third of an angle.
 */
export const WORKED_FRAGMENT = `${PRECISE}${STATES}
uniform sampler2D sheets;
uniform int part;
layout(location = 0) out vec4 worked;
float greatest(mat3 a) {
  float q = (a[0][0] + a[1][1] + a[2][2]) / 3.0;
  float off = a[0][1] * a[0][1] + a[0][2] * a[0][2] + a[1][2] * a[1][2];
  vec3 d = vec3(a[0][0], a[1][1], a[2][2]) - q;
  float p = sqrt((dot(d, d) + 2.0 * off) / 6.0);
  if (p < 1e-9 * q) return q;
  mat3 b = (a - mat3(q)) / p;
  return q + 2.0 * p * cos(acos(clamp(determinant(b) / 2.0, -1.0, 1.0)) / 3.0);
}
void main() {
  ivec2 at = ivec2(gl_FragCoord.xy);
  vec4 state = texelFetch(state0In, at, 0);
  worked = vec4(0.0);
  if (state.w > -1.5 || state.w ${IDLING}) return;
  int stack = int(-2.0 - state.w);
  vec3 x = texelFetch(state1In, at, 0).xyz, y = texelFetch(state2In, at, 0).xyz, z = texelFetch(state3In, at, 0).xyz;
  vec4 about = texelFetch(sheets, ivec2(0, stack), 0);
  int entries = textureSize(sheets, 0).x - 1;
  float share = clamp((state.z - about.x) / about.y, 0.0, 0.99999);
  float sheet = texelFetch(sheets, ivec2(1 + int(share * float(entries)), stack), 0).x;
  float gradient = length(vec3(x.z, y.z, z.z));
  mat3 rates = mat3(x, y, z);
  // Metal keeps its volume: what is lost in the least eigenvalue of one is the greatest of the other's inverse.
  mat3 cofactors = mat3(cross(y, z), cross(z, x), cross(x, y));
  float first = 0.5 * log(greatest(transpose(rates) * rates));
  float last = -0.5 * log(greatest(transpose(cofactors) * cofactors));
  float middle = -(first + last);
  float strain = sqrt(2.0 / 3.0 * (first * first + middle * middle + last * last));
  float thickness = log(max(sheet / max(gradient, 1e-6), 1e-7)) - (${THICKNESS_TOLD});
  worked = vec4(thickness, strain, 1.0, 1.0) * (part < 0 ? 1.0 : 1.0 / ${FINE * FINE}.0);
}`
