#pragma once

#include <map>
#include <string>

namespace model {

/// Fields that a garden document carries and this version does not know, name to JSON text.
/// They are kept and written back, so that an older program never drops a newer one's work.
using Extras = std::map<std::string, std::string>;

} // namespace model
