#include "model/diary/tree_diary.hpp"

namespace model::diary {

namespace {

/// The tree with what was known of it on the day.
Tree asKnown(Tree tree, std::chrono::year_month_day date)
{
    std::erase_if(tree.visits, [date](const Visit& visit) { return visit.date > date; });
    return tree;
}

} // namespace

TreeDiary treeDiary(const Garden& garden, const Tree& tree, const Foliation& foliation,
                    const Species& species, const StillToDo& plan, std::chrono::year_month_day date)
{
    const Tree known = asKnown(tree, date);
    TreeDiary diary;
    diary.tree = tree.id;
    diary.seasons = leafBySeason(known, species, garden.place, date);
    diary.allowance = advice::allowance(known, species, date);
    diary.growth = growth::measuredGrowth(known, species.practice.shootPattern, garden.place);
    diary.shoots = growth::shootRate(known, species, garden.place, takenLately(known, date));
    diary.wounds = wounds(known, species, garden.place, date);
    diary.due = dueOf(garden, known, foliation, species, diary.shoots, plan, date);
    return diary;
}

} // namespace model::diary
