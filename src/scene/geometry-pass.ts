import { RUBBED } from '#view'

/** Corners of the metal's facets to the picture; `toClip` is the whole way, metres to the card's cube. */
export const METAL_VERTEX = `
in vec3 position;
in vec3 normal;
in vec4 facet;
uniform mat4 toClip;
uniform vec3 stretch;
out highp vec3 place;
out highp vec3 smoothed;
out highp float below;
flat out highp vec3 flatNormal;
flat out highp vec3 onFacet;
void main() {
  place = position * stretch;
  onFacet = place;
  smoothed = normal / stretch;
  below = facet.w * stretch.z;
  flatNormal = facet.xyz / stretch;
  gl_Position = toClip * vec4(place, 1.0);
}`

export const PRECISE = `precision highp float;
precision highp int;
precision highp sampler2D;
`

/**
 * Where a pixel of the picture meets metal: its ray with the facet's plane, reckoned from the pixel itself, for cards
 * hand on places only as well as they place corners, a sixteenth of a pixel or so. Seen along parallel rays, a facet
 * seen from behind in front of all else can only be seen through a cut: there the ray meets the cutting plane, wherever
 * the facet lies. Ground metal is met as far under the facet as it is ground, square to it; a mark pressed into the face
 * is not ground, but met by it: over places less deep than the face is ground there is none of it left.
 */
export const MEETING = `
in highp vec3 place;
in highp vec3 smoothed;
in highp float below;
flat in highp vec3 flatNormal;
flat in highp vec3 onFacet;
uniform vec3 viewRight;
uniform vec3 viewUp;
uniform vec3 viewOut;
uniform vec3 viewMiddle;
uniform vec2 middle;
uniform float pixel;
uniform vec4 cutPlane;
uniform float ground;
bool meet(out vec3 p, out vec3 facet, out vec3 soft) {
  bool cutting = dot(cutPlane.xyz, cutPlane.xyz) > 0.5;
  if (cutting && dot(cutPlane.xyz, place) > cutPlane.w) return false;
  vec2 off = (gl_FragCoord.xy - middle) * pixel;
  p = viewMiddle + viewRight * off.x + viewUp * off.y;
  if (gl_FrontFacing) {
    facet = normalize(flatNormal);
    soft = normalize(smoothed);
    vec3 on = onFacet;
    float away = ground;
    if (below >= ground) away = 0.0;
    else if (below > 0.0) {
      facet = soft = vec3(0.0, 0.0, 1.0);
      on = vec3(place.xy, place.z + below);
    }
    float towards = max(dot(facet, viewOut), 1e-3);
    p += viewOut * ((dot(facet, on - p) - away) / towards);
    return true;
  }
  float towards = dot(cutPlane.xyz, viewOut);
  if (!cutting || towards < 1e-4) return false;
  p += viewOut * ((cutPlane.w - dot(cutPlane.xyz, p)) / towards);
  facet = cutPlane.xyz;
  soft = cutPlane.xyz;
  return true;
}`

/**
 * Places, facets and smooth normals of all that is seen. Place's fourth: 1 skin, 2 cut, 0 nothing; the normal's: how
 * much of polish and rubbing the skin is spared.
 */
export const GEOMETRY_FRAGMENT = `${PRECISE}${MEETING}
layout(location = 0) out vec4 placeSeen;
layout(location = 1) out vec4 facetSeen;
layout(location = 2) out vec4 normalSeen;
void main() {
  vec3 p, facet, soft;
  if (!meet(p, facet, soft)) discard;
  placeSeen = vec4(p, gl_FrontFacing ? 1.0 : 2.0);
  facetSeen = vec4(facet, 1.0);
  normalSeen = vec4(soft, gl_FrontFacing ? clamp((below - ground) / ${RUBBED}, 0.0, 1.0) : 0.0);
}`

/** The finished picture laid on the metal's own outline, which the card softens: rims are never jagged. */
export const FINAL_FRAGMENT = `${PRECISE}${MEETING}
uniform sampler2D shown;
out vec4 colour;
void main() {
  vec3 p, facet, soft;
  if (!meet(p, facet, soft)) discard;
  ivec2 at = ivec2(gl_FragCoord.xy);
  vec4 own = texelFetch(shown, at, 0);
  // A rim pixel whose middle lies off the metal takes its neighbour's colour.
  for (int k = 0; k < 8 && own.a == 0.0; k++) {
    ivec2 by = ivec2(int[8](1, -1, 0, 0, 1, -1, 1, -1)[k], int[8](0, 0, 1, -1, 1, 1, -1, -1)[k]);
    own = texelFetch(shown, at + by, 0);
  }
  if (own.a == 0.0) discard;
  colour = vec4(own.rgb, 1.0);
}`

/** One triangle over the whole picture. */
export const WHOLE_VERTEX = `
in vec3 position;
void main() { gl_Position = vec4(position.xy, 0.0, 1.0); }`
