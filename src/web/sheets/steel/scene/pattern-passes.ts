import { PRECISE } from './geometry-pass.ts'

/** What each pixel's two sides are in the metal: the pixel laid along the view onto the facet. */
const SIDES = `
uniform sampler2D places;
uniform sampler2D facets;
uniform vec3 viewRight;
uniform vec3 viewUp;
uniform vec3 viewOut;
uniform float pixel;
uniform vec3 stretch;
void sidesOf(vec3 facet, out vec3 u, out vec3 v) {
  float towards = max(dot(facet, viewOut), 1e-3);
  u = pixel * (viewRight - viewOut * (dot(viewRight, facet) / towards));
  v = pixel * (viewUp - viewOut * (dot(viewUp, facet) / towards));
  u /= stretch;
  v /= stretch;
}`

/** First pass of the pattern: where each pixel came from, how far it runs there. −2: no metal seen. */
export function traceFragment(pattern: string): string {
  return `${PRECISE}${SIDES}
${pattern}
layout(location = 0) out vec4 trace;
layout(location = 1) out vec4 skin;
void main() {
  ivec2 at = ivec2(gl_FragCoord.xy);
  vec4 place = texelFetch(places, at, 0);
  skin = vec4(0.0);
  trace = vec4(0.0, 0.0, 0.0, -2.0);
  if (place.w == 0.0) return;
  vec3 u, v;
  sidesOf(texelFetch(facets, at, 0).xyz, u, v);
  float seam;
  steelTrace(place.xyz / stretch, u, v, trace, seam);
  skin = vec4(seam, 0.0, 0.0, 1.0);
}`
}

/**
 * Second pass: the mean of each weight over each pixel. Where the pattern does not run straight from pixel to pixel
 * (joints, folds, creases) a pixel is taken in parts, as the engine does it.
 */
export function coverFragment(pattern: string, weights: number, fine: number): string {
  return `${PRECISE}${SIDES}
uniform sampler2D traces;
uniform sampler2D skins;
uniform bool parts;
${pattern}
layout(location = 0) out vec4 cover;
layout(location = 1) out vec4 more;
vec4 traceAt(ivec2 at) {
  ivec2 size = textureSize(traces, 0);
  if (any(lessThan(at, ivec2(0))) || any(greaterThanEqual(at, size))) return vec4(0.0, 0.0, 0.0, -2.0);
  return texelFetch(traces, at, 0);
}
bool breaks(vec4 a, vec4 b, bool across) {
  if (a.w < -1.5 || b.w < -1.5) return false;
  if (a.w != b.w) return true;
  return (across ? steelBend(a.xyz, b.xyz, a.xyz, true) : steelBend(a.xyz, a.xyz, b.xyz, false)) > 0.0;
}
void put(float means[${weights}], float metal, float seam, float stack) {
  cover = vec4(means[0], means[${Math.min(1, weights - 1)}], seam, stack);
  more = vec4(metal, ${weights > 2 ? 'means[2]' : '0.0'}, ${weights > 3 ? 'means[3]' : '0.0'}, 0.0);
}
void main() {
  ivec2 at = ivec2(gl_FragCoord.xy);
  vec4 own = texelFetch(traces, at, 0);
  float means[${weights}];
  cover = vec4(0.0, 0.0, 0.0, -2.0);
  more = vec4(0.0);
  if (own.w < -1.5) return;
  bool broken = parts && (
    breaks(own, traceAt(at - ivec2(1, 0)), true) || breaks(traceAt(at + ivec2(1, 0)), own, true) ||
    breaks(own, traceAt(at + ivec2(0, 1)), false) || breaks(traceAt(at - ivec2(0, 1)), own, false));
  if (!broken) {
    steelMeans(own, means);
    put(means, own.w < 0.0 ? 0.0 : 1.0, texelFetch(skins, at, 0).x, own.w);
    return;
  }
  vec3 place = texelFetch(places, at, 0).xyz / stretch;
  vec3 u, v;
  sidesOf(texelFetch(facets, at, 0).xyz, u, v);
  float sum[${weights}];
  for (int k = 0; k < ${weights}; k++) sum[k] = 0.0;
  float metal = 0.0, welded = 0.0, stack = own.w;
  for (int n = 0; n < ${fine * fine}; n++) {
    vec2 s = (vec2(n % ${fine}, n / ${fine}) + 0.5) / ${fine}.0 - 0.5;
    vec4 part;
    float seam;
    steelTrace(place + s.x * u + s.y * v, u / ${fine}.0, v / ${fine}.0, part, seam);
    welded += seam;
    if (part.w < 0.0) continue;
    if (stack < 0.0) stack = part.w;
    metal += 1.0;
    steelMeans(part, means);
    for (int k = 0; k < ${weights}; k++) sum[k] += means[k];
  }
  for (int k = 0; k < ${weights}; k++) means[k] = metal > 0.0 ? sum[k] / metal : 0.0;
  put(means, metal / ${fine * fine}.0, welded / ${fine * fine}.0, stack);
}`
}

/**
 * How the metal was worked, point by point: thickness of the sheet it lies in (m) and how far it was strained. The
 * strain is Hencky's equivalent √(2/3 Σ ln² λ), the stretches λ from the eigenvalues of FFᵀ, whose inverse the
 * pull-back's rates give; eigenvalues of a symmetric matrix by the cosine of a third of an angle.
 */
export function workedFragment(move: string): string {
  return `${PRECISE}
uniform sampler2D places;
uniform sampler2D sheets;
uniform vec3 stretch;
${move}
layout(location = 0) out vec4 worked;
vec3 eigenvalues(mat3 a) {
  float q = (a[0][0] + a[1][1] + a[2][2]) / 3.0;
  float off = a[0][1] * a[0][1] + a[0][2] * a[0][2] + a[1][2] * a[1][2];
  vec3 d = vec3(a[0][0], a[1][1], a[2][2]) - q;
  float p = sqrt((dot(d, d) + 2.0 * off) / 6.0);
  if (p < 1e-12) return vec3(q);
  mat3 b = (a - mat3(q)) / p;
  float angle = acos(clamp(determinant(b) / 2.0, -1.0, 1.0)) / 3.0;
  float high = q + 2.0 * p * cos(angle);
  float low = q + 2.0 * p * cos(angle + 2.0943951);
  return vec3(high, 3.0 * q - high - low, low);
}
void main() {
  ivec2 at = ivec2(gl_FragCoord.xy);
  vec4 place = texelFetch(places, at, 0);
  worked = vec4(0.0, 0.0, 0.0, -2.0);
  if (place.w == 0.0) return;
  vec4 origin;
  mat3 rates;
  moveMove(place.xyz / stretch, origin, rates);
  if (origin.w < 0.0) return;
  vec4 about = texelFetch(sheets, ivec2(0, int(origin.w)), 0);
  int entries = textureSize(sheets, 0).x - 1;
  float share = clamp((origin.z - about.x) / about.y, 0.0, 0.99999);
  float sheet = texelFetch(sheets, ivec2(1 + int(share * float(entries)), int(origin.w)), 0).x;
  float gradient = length(vec3(rates[0].z, rates[1].z, rates[2].z));
  vec3 stretch = 0.5 * log(max(eigenvalues(transpose(rates) * rates), vec3(1e-9)));
  stretch -= (stretch.x + stretch.y + stretch.z) / 3.0;
  worked = vec4(sheet / max(gradient, 1e-6), sqrt(2.0 / 3.0 * dot(stretch, stretch)), 0.0, origin.w);
}`
}
