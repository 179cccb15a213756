#pragma once

#include "model/document/fault.hpp"

#include <stdexcept>
#include <string>
#include <vector>

namespace app {

/// Why a garden file could not be read or written.
class StoreError : public std::runtime_error {
public:
    enum class Kind {
        missing,  ///< no file of that name, any more
        foreign,  ///< another program's file
        newer,    ///< written by a newer version of this program
        damaged,  ///< not what was written; recoverGarden() may read some of it
        unfit,    ///< whole, but not a garden that can be reckoned with
        full,     ///< the disk is full
        readOnly, ///< the file, its folder or its disk can't be written
        busy,     ///< another program is writing it
        changed,  ///< another program wrote it since it was last read or written here
        failed,   ///< anything else the disk or the library says
    };

    StoreError(Kind kind, std::string found, std::string expected)
        : StoreError(kind, {model::Fault{{}, std::move(found), std::move(expected)}})
    {
    }
    StoreError(Kind kind, std::vector<model::Fault> faults)
        : std::runtime_error(model::oneLine(faults.front())), kind_(kind),
          faults_(std::move(faults))
    {
    }

    [[nodiscard]] Kind kind() const { return kind_; }
    /// At least one.
    [[nodiscard]] const std::vector<model::Fault>& faults() const { return faults_; }

private:
    Kind kind_;
    std::vector<model::Fault> faults_;
};

} // namespace app
