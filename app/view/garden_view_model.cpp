#include "app/view/garden_view_model.hpp"

#include "app/document/garden_file.hpp"
#include "app/words/example_words.hpp"
#include "app/words/wording.hpp"

#include <QDir>
#include <QStandardPaths>

namespace app {

GardenViewModel::GardenViewModel(Workspace& workspace, std::vector<Example> examples,
                                 QObject* parent)
    : QObject(parent), workspace_(workspace), examples_(std::move(examples))
{
    auto& document = workspace_.document();
    connect(&document, &Document::fileChanged, this, &GardenViewModel::fileChanged);
    for (const auto signal : {&QUndoStack::undoTextChanged, &QUndoStack::redoTextChanged})
        connect(&document.history(), signal, this, &GardenViewModel::historyChanged);
    for (const auto signal : {&QUndoStack::canUndoChanged, &QUndoStack::canRedoChanged})
        connect(&document.history(), signal, this, &GardenViewModel::historyChanged);
    connect(&workspace_, &Workspace::treeChanged, this, &GardenViewModel::treesChanged);
    connect(&workspace_, &Workspace::problemChanged, this, &GardenViewModel::problemChanged);
    connect(&workspace_, &Workspace::busyChanged, this, &GardenViewModel::busyChanged);
}

QString GardenViewModel::title() const
{
    return tr("%1%2 - Underbough", "garden's name, mark of unsaved changes")
        .arg(workspace_.document().name(), isDirty() ? QStringLiteral(" *") : QString());
}

QString GardenViewModel::gardenName() const
{
    return workspace_.document().name();
}

QUrl GardenViewModel::suggestedFile() const
{
    if (hasFile())
        return QUrl::fromLocalFile(workspace_.document().path());
    const QDir folder(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
    return QUrl::fromLocalFile(
        folder.filePath(gardenName() + QLatin1Char('.') + QLatin1String(kStoreSuffix)));
}

QString GardenViewModel::saveState() const
{
    if (isOnlyShown())
        return tr("Only shown", "a garden that another window has open");
    if (isDirty())
        return tr("Not saved");
    return savesItself() ? tr("All saved") : QString();
}

QString GardenViewModel::undoName() const
{
    return workspace_.document().history().undoText();
}

QString GardenViewModel::redoName() const
{
    return workspace_.document().history().redoText();
}

bool GardenViewModel::canUndo() const
{
    return workspace_.document().history().canUndo();
}

bool GardenViewModel::canRedo() const
{
    return workspace_.document().history().canRedo();
}

QStringList GardenViewModel::trees() const
{
    QStringList names;
    for (const auto& tree : workspace_.garden().trees)
        names << QString::fromStdString(tree.name.empty() ? tree.id : tree.name);
    return names;
}

int GardenViewModel::treeIndex() const
{
    const auto* chosen = workspace_.tree();
    return chosen ? static_cast<int>(chosen - workspace_.garden().trees.data()) : -1;
}

QString GardenViewModel::treeFacts() const
{
    const auto* tree = workspace_.tree();
    const auto* species = workspace_.species();
    if (!tree || !species)
        return {};
    const auto& units = workspace_.units();
    return tr("%1, %2 high, stem %3 thick at breast height")
        .arg(capitalised(speciesName(*species)), units.roughLength(model::height_m(*tree)),
             units.diameter(model::stemDiameter_m(*tree)));
}

QStringList GardenViewModel::examples() const
{
    QStringList names;
    for (const auto& example : examples_)
        names << exampleWords(example.name.toStdString());
    return names;
}

bool GardenViewModel::worked(const QString& problem)
{
    workspace_.say(problem);
    return problem.isEmpty();
}

bool GardenViewModel::open(const QUrl& file)
{
    return worked(workspace_.document().open(file.toLocalFile()));
}

bool GardenViewModel::openExample(int index)
{
    if (index < 0 || static_cast<std::size_t>(index) >= examples_.size())
        return false;
    auto example =
        readGardenFile(examples_[static_cast<std::size_t>(index)].path, workspace_.tables());
    if (example.garden) {
        translateExample(*example.garden);
        workspace_.document().start(std::move(*example.garden));
    }
    return worked(example.problem);
}

bool GardenViewModel::save()
{
    return hasFile() && worked(workspace_.document().save());
}

bool GardenViewModel::saveAs(const QUrl& file)
{
    return worked(workspace_.document().saveAs(file.toLocalFile()));
}

void GardenViewModel::undo()
{
    workspace_.say({});
    workspace_.document().history().undo();
}

void GardenViewModel::redo()
{
    workspace_.say({});
    workspace_.document().history().redo();
}

void GardenViewModel::chooseTree(int index)
{
    const auto& trees = workspace_.garden().trees;
    if (index >= 0 && static_cast<std::size_t>(index) < trees.size())
        workspace_.chooseTree(trees[static_cast<std::size_t>(index)].id);
}

} // namespace app
