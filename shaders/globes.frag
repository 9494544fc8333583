// Spheres and ellipsoids: nearly clear in the middle, their colour towards the edge.
// In: place relative to the camera (m), normal.
// Adjust: colour through a uniform; BODY below.
#version 330 core
const float BODY = 0.06; // share of the opacity in the middle
uniform vec4 colour;
in vec3 v_relative_m;
in vec3 v_normal;
out vec4 result;

void main() {
    float facing = abs(dot(normalize(v_normal), normalize(v_relative_m)));
    float edge = 1.0 - facing;
    // The last of the rim goes soft: there the ball shows that it is made of flat faces.
    float rim = smoothstep(0.05, 0.16, facing);
    result = vec4(colour.rgb, colour.a * rim * (BODY + (1.0 - BODY) * edge * edge * edge));
}
