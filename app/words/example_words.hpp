#pragma once

#include "model/garden/garden.hpp"

#include <QString>

#include <string>

/// Example gardens are written in English. What their gardeners call things is put into the
/// language spoken when one of them is opened (app/language/examples_de.ts); a garden of the
/// person's own is left as it is.
namespace app {

[[nodiscard]] QString exampleWords(const std::string& english);

/// Names, notes and who came.
void translateExample(model::Garden& garden);

} // namespace app
