#include "app/words/cautions.hpp"

#include "app/words/wording.hpp"

namespace app {

QStringList cautions()
{
    return {
        Words::tr("These are estimates from a sketch, not an inspection. Nothing here says that a "
                  "tree or a limb is safe: a tree with no visible defect can still fail."),
        Words::tr("When in doubt, ask a certified arborist to look at the tree itself, and do so "
                  "at once for a crack, a fresh lean, lifting soil, a hung-up branch or mushrooms "
                  "at the base."),
        Words::tr("Every overhead wire counts as live. Within 3 m (10 ft) of one, or if a branch "
                  "could fall that near, do not cut: call the line's operator. In the UK ask the "
                  "operator first within 10 m."),
        Words::tr("Ask your local authority before you cut: tree protection orders, conservation "
                  "areas, permits and felling rules differ from place to place and come before "
                  "anything said here."),
        Words::tr("Look for nests, bats and other animals first. Harming a nest in use or a roost "
                  "is against the law in many countries."),
        Words::tr("Never work alone, from a ladder with a saw, or above your shoulders with a "
                  "chainsaw. Wear eye, hand and head protection, and keep people and pets well "
                  "clear of where a piece can fall."),
        Words::tr("Stop in strong wind, rain, poor light or great heat."),
    };
}

} // namespace app
