#pragma once

#include "app/format/units.hpp"
#include "model/garden/garden.hpp"
#include "model/species/species.hpp"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace app {

/// Translation context of every sentence in app/words.
class Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

/// What a sentence about one tree needs besides its figures. Holds references: make it where the
/// sentences are made and let it go.
struct Wording {
    const Units& units;
    const model::Garden& garden;
    const model::Tree& tree;
    const model::Species& species;
};

/// What the gardener calls a limb, in quotes, or its id: “south scaffold”.
[[nodiscard]] QString limbName(const Wording& wording, const std::string& id);
/// The same for whatever else in the garden has this id: strip, line, structure, planting, tree.
[[nodiscard]] QString thingName(const model::Garden& garden, const std::string& id);
/// The limb of this tree, or else the thing of the garden, that has this id.
[[nodiscard]] QString subjectName(const Wording& wording, const std::string& id);

/// “The old apple”, or the species when the tree has no name.
[[nodiscard]] QString treeName(const model::Tree& tree, const model::Species& species);

/// The name that people use, without a botanist's remarks: "silver birch".
[[nodiscard]] QString commonName(const model::Species& species);
[[nodiscard]] QString commonName(const model::Plant& plant);

/// Every name to find a kind by, divided by line feeds: as spoken, as the tables have it, Latin.
[[nodiscard]] QString namesOf(const std::string& common, const std::string& latin);

/// "apple (Malus domestica)".
[[nodiscard]] QString speciesName(const model::Species& species);

/// "a, b and c" as the locale lists things.
[[nodiscard]] QString listed(const Units& units, const QStringList& parts);

/// The first letter as a capital.
[[nodiscard]] QString capitalised(QString sentence);

/// The sign a gardener ticked: "mushrooms or brackets on stem or roots".
[[nodiscard]] QString signWords(model::Sign sign);

} // namespace app
