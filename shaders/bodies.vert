// Aircraft and people: parts with flat faces.
// In: place and normal in the part's own axes (right, ahead, above; m), kind of surface.
// Adjust: nothing here.
#version 330 core
layout(location = 0) in vec3 place_m;
layout(location = 1) in vec3 normal;
layout(location = 2) in float surface;
uniform mat4 relativeToClip;
uniform mat4 partToRelative; // from the part's axes to places relative to the camera
out vec3 v_normal;
out vec3 v_place;
flat out float v_surface;

void main() {
    vec4 p = partToRelative * vec4(place_m, 1.0);
    v_normal = mat3(partToRelative) * normal;
    v_place = place_m;
    v_surface = surface;
    gl_Position = relativeToClip * p;
}
