import { SPARED } from '#look'
import { PRECISE } from './geometry-pass.ts'
import { MODES } from './modes.ts'
import { THICKNESS_TOLD } from './pattern-passes.ts'

/**
 * The etched face as the eye sees it: the shading of the engine's pictures (see the room for pictures), pixel for
 * pixel where the metal faces the eye. In three dimensions the polish runs along the metal and the strip light may be
 * turned: slopes are taken along and across the strip. Scratches lie on the metal, twice as far apart for each
 * doubling of the pixel.
 */
export const LOOK_FRAGMENT = `${PRECISE}
uniform sampler2D places;
uniform sampler2D normals;
uniform sampler2D cover;
uniform sampler2D more;
uniform sampler2D worked;
uniform vec3 viewRight;
uniform vec3 viewUp;
uniform vec3 viewOut;
uniform vec2 middle;
uniform float pixel;
uniform float pictureWidth;
uniform int mode;
uniform vec2 range;
uniform float steps;
uniform float relief;
uniform float hollow;
uniform float scratches;
uniform float strip;
uniform float stripHalf;
uniform float stripLight;
uniform float sky;
uniform float wall;
uniform vec2 stripAlong;
uniform vec3 brightMirror;
uniform vec3 brightDull;
uniform vec2 brightRough;
uniform vec3 darkMirror;
uniform vec3 darkDull;
uniform vec2 darkRough;
layout(location = 0) out vec4 shown;

float scatter(int seed, int i, int j) {
  uint h = uint(seed) * 0x9e3779b1u ^ uint(i) * 0x85ebca6bu ^ uint(j) * 0xc2b2ae35u;
  h = (h ^ (h >> 15)) * 0x2c1b3c6du;
  h = (h ^ (h >> 12)) * 0x297a2d39u;
  return float((h ^ (h >> 15)) >> 8) / 16777216.0;
}
float toScreen(float v) {
  v = clamp(v, 0.0, 1.0);
  return v <= 0.0031308 ? 12.92 * v : 1.055 * pow(v, 1.0 / 2.4) - 0.055;
}
/** Along and across the polish on the face a point lies on. */
vec2 onFace(vec3 p, vec3 n) {
  vec3 a = abs(n);
  if (a.x > a.y && a.x > a.z) return p.yz;
  return vec2(p.x, a.z >= a.y ? p.y : p.z);
}
float strokes(vec2 at, float spacing, float fade) {
  int row = int(floor(at.y / spacing));
  float sum = 0.0;
  for (int k = 0; k < 2; k++) {
    float stroke = k == 0 ? 12e-3 : 3.5e-3;
    float along = at.x / stroke + scatter(1 + k, row, -1);
    float cell = floor(along);
    float a = scatter(1 + k, row, int(cell)) - 0.5;
    float b = scatter(1 + k, row, int(cell) + 1) - 0.5;
    sum += fade * scratches * (a + (b - a) * (along - cell)) * float(2 - k);
  }
  return sum;
}
/** Scratches no finer than a pixel; from one spacing to the next they pass over smoothly. */
float scratchTilt(vec2 at) {
  float fade = min(1.0, sqrt(2e-5 / pixel) + 0.25);
  float level = max(0.0, log2(pixel / 2e-5));
  float spacing = 2e-5 * exp2(floor(level));
  float next = fract(level);
  return mix(strokes(at, spacing, fade), strokes(at, 2.0 * spacing, fade), next);
}
float share(float edge, float slope, float rough) {
  float t = (edge - slope) / rough;
  return 0.5 + 0.5 * t / sqrt(1.0 + t * t);
}
vec3 lit(float c, vec2 slope, vec2 polish, float dim) {
  float d = 1.0 - c;
  vec2 rough = c * brightRough + d * darkRough;
  // slope.x along the strip, slope.y across it; polish: how far each lies along the polish.
  float across = sqrt(mix(rough.x * rough.x, rough.y * rough.y, polish.y));
  float along = sqrt(mix(rough.y * rough.y, rough.x * rough.x, polish.y));
  float edges[6] = float[6](-0.75, -0.12, -0.02, strip - stripHalf, strip + stripHalf, 0.9);
  float bands[7] = float[7](0.05, wall, 0.03, sky, stripLight, sky, 0.08);
  float below = 0.0, mirrored = 0.0;
  for (int k = 0; k < 6; k++) {
    float s = share(edges[k], slope.y, across);
    mirrored += bands[k] * (s - below);
    below = s;
  }
  mirrored += bands[6] * (1.0 - below);
  float past = slope.x / 0.9;
  mirrored *= 1.0 / (1.0 + past * past);
  float side = (slope.x - 0.35) / along, lift = (slope.y - 0.05) / across;
  float spot = 1.0 + side * side + lift * lift;
  mirrored += 0.35 / (3.14159265 * spot * spot);
  float facing = inversesqrt(1.0 + slope.x * slope.x + (slope.y - strip) * (slope.y - strip));
  float ambient = 0.5 * (sky + wall) + 0.05 * stripLight;
  float soft = ambient * (0.35 + 0.65 * facing);
  vec3 mirror = c * brightMirror + d * darkMirror;
  vec3 dull = c * brightDull + d * darkDull;
  vec3 v = 2.1 * dim * (mirror * mirrored + dull * soft);
  return v * (1.0 + v / 64.0) / (1.0 + v);
}
vec4 tallAt(ivec2 at, vec3 p, float here) {
  ivec2 size = textureSize(cover, 0);
  if (any(lessThan(at, ivec2(0))) || any(greaterThanEqual(at, size))) return vec4(here);
  vec4 g = texelFetch(places, at, 0);
  // Across a rim or a step in depth lies other metal: no relief is read there.
  if (g.w == 0.0 || abs(dot(g.xyz - p, viewOut)) > 4.0 * pixel) return vec4(here);
  float share = texelFetch(more, at, 0).x;
  return vec4(share > 0.0 ? texelFetch(cover, at, 0).y / share : here);
}
float valueOf(ivec2 at) {
  if (mode == ${MODES.thickness} || mode == ${MODES.strain}) {
    vec4 sum = texelFetch(worked, at, 0);
    vec2 mean = sum.xy / max(sum.z, 1e-3);
    return mode == ${MODES.strain} ? mean.y : mean.x + (${THICKNESS_TOLD});
  }
  vec4 means = texelFetch(more, at, 0);
  return (mode == ${MODES.carbon} ? means.y : means.z) / max(means.x, 1e-3);
}
void main() {
  ivec2 at = ivec2(gl_FragCoord.xy);
  vec4 g = texelFetch(places, at, 0);
  shown = vec4(0.0);
  vec4 own = texelFetch(cover, at, 0);
  float metal = texelFetch(more, at, 0).x;
  if (g.w == 0.0 || metal < 0.5) return;
  // What was taken in parts is told as shares of the metal there.
  own.xy /= metal;
  vec3 p = g.xyz;
  vec4 leaning = texelFetch(normals, at, 0);
  vec3 n = leaning.xyz;
  float unrubbed = leaning.w;
  if (mode == ${MODES.plain}) {
    shown = vec4(vec3(own.x), 1.0);
    return;
  }
  float facing = clamp(dot(n, viewOut), 0.0, 1.0);
  float form = 0.72 + 0.28 * facing;
  if (mode == ${MODES.bar}) {
    float s = own.w;
    float tone = 0.82 - 0.56 * fract(s * 0.38);
    float turn = s * 0.9 + 0.4;
    vec2 q = gl_FragCoord.xy;
    float line = abs(fract((q.x * cos(turn) + q.y * sin(turn)) / (7.0 + 2.0 * mod(s, 3.0))) - 0.5);
    float hatch = s < 0.5 ? 1.0 : smoothstep(0.06, 0.16, line);
    shown = vec4(vec3(tone * form * mix(0.62, 1.0, hatch)), 1.0);
    return;
  }
  if (mode >= ${MODES.thickness}) {
    float value = valueOf(at);
    float t = clamp((value - range.x) / max(range.y - range.x, 1e-9), 0.0, 1.0);
    float level = t * steps;
    float slope = max(fwidth(level), 1e-4);
    float line = abs(fract(level + 0.5) - 0.5) / slope;
    // Layers of one steel are level: only what changes from place to place has lines of equal height.
    float inner = float(mode == ${MODES.strain}) * step(0.4, level) * step(level, steps - 0.4) * step(slope, 0.5);
    float tone = mix(0.12, 0.9, t) * form;
    float ink = t > 0.5 ? 0.05 : 0.95;
    shown = vec4(vec3(mix(tone, ink, 0.55 * inner * (1.0 - smoothstep(0.4, 1.1, line)))), 1.0);
    return;
  }
  float c = (own.x + (1.0 - own.x) * 0.85 * own.z) * (1.0 - ${SPARED.skin} * unrubbed);
  float here = own.y;
  float left = tallAt(at - ivec2(1, 0), p, here).x, right = tallAt(at + ivec2(1, 0), p, here).x;
  float lower = tallAt(at - ivec2(0, 1), p, here).x, upper = tallAt(at + ivec2(0, 1), p, here).x;
  float steep = relief / (2.0 * pixel);
  vec2 across = vec2(dot(n, viewRight), dot(n, viewUp));
  float outward = sqrt(max(0.02, 1.0 - dot(across, across)));
  float eye = 1.0 / (2.0 * max(0.4, 1.2 * pictureWidth));
  vec2 slope = across / outward - vec2(right - left, upper - lower) * steep;
  slope -= (gl_FragCoord.xy - middle) * pixel * eye;
  vec2 face = onFace(p, n);
  vec2 polish = vec2(viewRight.x, viewUp.x);
  float laid = dot(polish, polish);
  polish = laid > 1e-4 ? polish * inversesqrt(laid) : vec2(1.0, 0.0);
  slope += vec2(-polish.y, polish.x) * c * (1.0 - unrubbed) * scratchTilt(face);
  vec2 turned = vec2(dot(slope, stripAlong), dot(slope, vec2(-stripAlong.y, stripAlong.x)));
  float parallel = dot(polish, stripAlong);
  float sunk = max(0.0, (left + right + upper + lower) / 4.0 - here);
  float dim = (1.0 - hollow * min(1.0, 4.0 * sunk)) * (1.0 - ${SPARED.darker} * unrubbed);
  ivec2 grainAt = ivec2(floor(face / (2e-5 * exp2(floor(max(0.0, log2(pixel / 2e-5)))))));
  float grain = scratches > 0.0 ? 1.0 + 0.05 * (scatter(1, grainAt.x, grainAt.y) - 0.5) : 1.0;
  vec3 light = lit(c, clamp(turned, vec2(-3.0), vec2(3.0)), vec2(0.0, parallel * parallel), dim * grain);
  shown = vec4(toScreen(light.r), toScreen(light.g), toScreen(light.b), 1.0);
}`
