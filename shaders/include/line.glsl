// Turns a segment between two clip-space points into a quad of constant width on screen.
// corner: 0..3 of a triangle strip; width_px: full width; viewport_px: size of the picture's part.
// Ends behind the camera are cut at the near plane, so that a line past the eye stays straight.
const float EDGE_PX = 0.5; // room on each side for the soft edge

vec4 lineCorner(vec4 a, vec4 b, float width_px, vec2 viewport_px, int corner, out float across_px, out float along_px) {
    float nearA = a.z + a.w;
    float nearB = b.z + b.w;
    if (nearA < 0.0 && nearB < 0.0) {
        across_px = 0.0;
        along_px = 0.0;
        return vec4(0.0, 0.0, 2.0, 1.0); // outside: nothing is drawn
    }
    if (nearA < 0.0) {
        a = mix(a, b, (nearA - 1e-4 * nearB) / (nearA - nearB));
    } else if (nearB < 0.0) {
        b = mix(b, a, (nearB - 1e-4 * nearA) / (nearB - nearA));
    }
    vec2 pa = a.xy / a.w * 0.5 * viewport_px;
    vec2 pb = b.xy / b.w * 0.5 * viewport_px;
    vec2 way = pb - pa;
    float length_px = length(way);
    way = length_px > 1e-4 ? way / length_px : vec2(1.0, 0.0);
    vec2 side = vec2(-way.y, way.x);
    float half_px = 0.5 * width_px + EDGE_PX;
    float s = (corner & 1) == 0 ? -1.0 : 1.0;
    bool atB = corner >= 2;
    across_px = s * half_px;
    along_px = atB ? length_px + 0.5 : -0.5;
    vec2 p = (atB ? pb + 0.5 * way : pa - 0.5 * way) + s * half_px * side;
    float w = atB ? b.w : a.w;
    return vec4(p / (0.5 * viewport_px) * w, atB ? b.z : a.z, w);
}

// Opacity across a line of that width: 1 inside, soft over one pixel at the edge.
float lineCover(float across_px, float width_px) {
    return clamp(0.5 * width_px + 0.5 - abs(across_px), 0.0, 1.0) * min(1.0, width_px);
}
