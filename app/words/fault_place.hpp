#pragma once

#include "model/document/fault.hpp"
#include "model/garden/garden.hpp"

#include <QByteArray>
#include <QString>

#include <string>

/// Where a fault stands, as the gardener calls it, who has named a tree and its limbs and never
/// counted them from 0.
namespace app {

/// “gate limb” of “the maple by the drive”; the id of what has no name. Empty where nothing that
/// has either stands on the pointer's way, and where the document can't be read as JSON.
///
/// \param document  what the pointer points into, as JSON
[[nodiscard]] QString faultPlace(const std::string& pointer, const QByteArray& document);

/// faultLine() with that place before it: “gate limb” of “the maple” (/trees/0/limbs/2): found ...
[[nodiscard]] QString placedFaultLine(const model::Fault& fault, const QByteArray& document);

/// Why a change to a drawing is refused: what can't be drawn like that, and what it needs.
[[nodiscard]] QString refusedDrawing(const model::Fault& fault, const model::Garden& after);

} // namespace app
