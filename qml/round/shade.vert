// Leaf that throws a shadow and is not seen itself: from the sun, who looks in parallel, it is where
// it is; from the gardener, who looks from one place, it is out of the picture.
void MAIN()
{
    bool fromTheSun = PROJECTION_MATRIX[3][3] != 0.0;
    POSITION = fromTheSun ? MODELVIEWPROJECTION_MATRIX * vec4(VERTEX, 1.0) : vec4(0.0, 0.0, 2.0, 1.0);
}
