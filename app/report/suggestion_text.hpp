#pragma once

#include "app/report/text_page.hpp"
#include "app/words/wording.hpp"
#include "model/advice/hold.hpp"

namespace app {

/// Adds what to cut and the headroom that it gives.
void addSuggestion(TextPage& page, const model::advice::Suggestion& suggestion,
                   const Wording& wording);

/// Adds what cutting higher costs and how long it holds; nothing for an empty list.
void addHolds(TextPage& page, const std::vector<model::advice::Hold>& holds,
              const Wording& wording);

/// Adds who does it, with every reason.
void addLabour(TextPage& page, const model::advice::Labour& labour, const Wording& wording);

/// Adds the heading "Headroom" and a sentence for each strip.
void addHeadroom(TextPage& page, const std::vector<model::headroom::StripHeadroom>& strips,
                 const Wording& wording);

/// Adds the standing cautions: every report ends with them.
void addCautions(TextPage& page);

/// Adds the tree's own title: its name, species, height and stem.
/// Which cuts remain for the gardener, under who does it; nothing if no arborist is asked for.
void addSharedWork(TextPage& page, const model::advice::Suggestion& suggestion,
                   const model::advice::Labour& labour, const Wording& wording);
void addTreeTitle(TextPage& page, const Wording& wording);

} // namespace app
