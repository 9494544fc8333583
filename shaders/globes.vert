// Spheres and ellipsoids seen through: gate shells and two-sigma bodies.
// In: place on the unit sphere, which is its normal too.
// Adjust: nothing here.
#version 330 core
layout(location = 0) in vec3 place;
uniform mat4 relativeToClip;
uniform mat4 globeToRelative; // from the unit sphere to places relative to the camera
uniform mat3 normalToRelative;
out vec3 v_relative_m;
out vec3 v_normal;

void main() {
    vec4 p = globeToRelative * vec4(place, 1.0);
    v_relative_m = p.xyz;
    v_normal = normalToRelative * place;
    gl_Position = relativeToClip * p;
}
