#include "model/advice/debris.hpp"

namespace model::advice {

Debris debrisOf(std::span<const Piece> pieces)
{
    Debris debris;
    double solid_m3 = 0.0;
    for (const auto& piece : pieces) {
        debris.mass_kg += piece.mass_kg;
        debris.logs_kg += piece.logs_kg;
        solid_m3 += piece.logs_m3;
        debris.pieces += piece.diameter_m > 0.0 ? 1 : 0;
    }
    debris.logs_m3 = solid_m3 / kStacked; // (A11)
    debris.brush_kg = debris.mass_kg - debris.logs_kg;
    debris.brush_m3 = debris.brush_kg / kBrush_kg_m3;
    debris.brushLow_m3 = debris.brush_kg / kBrushDense_kg_m3;
    debris.brushHigh_m3 = debris.brush_kg / kBrushLoose_kg_m3;
    return debris;
}

Debris operator+(Debris a, const Debris& b)
{
    a.mass_kg += b.mass_kg;
    a.brush_kg += b.brush_kg;
    a.brush_m3 += b.brush_m3;
    a.brushLow_m3 += b.brushLow_m3;
    a.brushHigh_m3 += b.brushHigh_m3;
    a.logs_kg += b.logs_kg;
    a.logs_m3 += b.logs_m3;
    a.pieces += b.pieces;
    return a;
}

} // namespace model::advice
