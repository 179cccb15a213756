#pragma once

#include "app/view/add_tree_view_model.hpp"
#include "app/view/answers_view_model.hpp"
#include "app/view/conditions_view_model.hpp"
#include "app/view/day_view_model.hpp"
#include "app/view/diary_view_model.hpp"
#include "app/view/garden_view_model.hpp"
#include "app/view/grounds_view_model.hpp"
#include "app/view/light_view_model.hpp"
#include "app/view/limb_shape_view_model.hpp"
#include "app/view/limb_view_model.hpp"
#include "app/view/new_garden_view_model.hpp"
#include "app/view/offers_view_model.hpp"
#include "app/view/paper_view_model.hpp"
#include "app/view/plan_editor_view_model.hpp"
#include "app/view/plan_view_model.hpp"
#include "app/view/round_view_model.hpp"
#include "app/view/side_view_model.hpp"
#include "app/view/stages_view_model.hpp"
#include "app/view/thing_view_model.hpp"
#include "app/view/tree_view_model.hpp"
#include "app/view/underlay_view_model.hpp"
#include "app/view/why_view_model.hpp"
#include "app/view/work_view_model.hpp"

#include <QVariantMap>

namespace app {

/// One workspace and a view-model for each page of the window.
struct Pages {
    Workspace workspace;
    GardenViewModel garden;
    SideViewModel side;
    PlanViewModel plan;
    RoundViewModel round;
    ConditionsViewModel conditions;
    AnswersViewModel answers;
    WorkViewModel work;
    LightViewModel light;
    DiaryViewModel diary;
    DayViewModel day;
    PaperViewModel paper;
    NewGardenViewModel newGarden;
    AddTreeViewModel addTree;
    PlanEditorViewModel planEditor;
    ThingViewModel thing;
    TreeViewModel tree;
    LimbViewModel limb;
    LimbShapeViewModel limbShape;
    UnderlayViewModel underlay;
    GroundsViewModel grounds;
    WhyViewModel why;
    OffersViewModel offers;
    StagesViewModel stages;

    /// \param tables  outlives the pages
    Pages(const model::Tables& tables, Units units, Works works, std::chrono::year_month_day today,
          std::vector<Example> examples);

    /// The view-models under the names by which Main.qml wants them.
    [[nodiscard]] QVariantMap properties();
};

/// The gardens that were built into the program.
[[nodiscard]] std::vector<Example> builtInExamples();

/// The folder of the QML modules that were built into the program.
[[nodiscard]] QString qmlImportPath();

} // namespace app
