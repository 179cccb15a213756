import QtQuick
import QtQuick.Dialogs
import Underbough.App
import Underbough.Ui

/// Opening, saving and leaving, so that nothing drawn is dropped without being asked about.
Item {
    id: root

    required property GardenViewModel garden

    /// What to go on with once the question about unsaved changes is answered.
    enum Next { Nothing, New, Open, Example, Close }
    property int next: FileFlow.Nothing
    property int nextExample: -1
    property bool leaving: false

    signal closeWanted
    signal newWanted

    function askNew() { root.leaveThen(FileFlow.New) }
    function askOpen() { root.leaveThen(FileFlow.Open) }
    function askExample(index: int) {
        root.nextExample = index
        root.leaveThen(FileFlow.Example)
    }
    function askSaveAs() { saveDialog.open() }
    function save() {
        if (root.garden.hasFile)
            root.garden.save()
        else
            saveDialog.open()
    }
    /// Whether the window may close now; if not, the question is asked first.
    function mayClose(): bool {
        root.garden.settle()
        if (root.leaving || !root.garden.isDirty)
            return true
        root.leaveThen(FileFlow.Close)
        return false
    }
    function leaveThen(next: int) {
        root.next = next
        root.garden.settle()
        if (root.garden.isDirty)
            question.open()
        else
            root.goOn()
    }
    function goOn() {
        const next = root.next
        root.next = FileFlow.Nothing
        switch (next) {
        case FileFlow.New:
            root.newWanted()
            break
        case FileFlow.Open:
            openDialog.open()
            break
        case FileFlow.Example:
            root.garden.openExample(root.nextExample)
            break
        case FileFlow.Close:
            root.leaving = true
            root.closeWanted()
            break
        }
    }

    SaveQuestion {
        id: question
        gardenName: root.garden.gardenName
        onDropChosen: root.goOn()
        onSaveChosen: {
            if (!root.garden.hasFile)
                saveDialog.open()
            else if (root.garden.save())
                root.goOn()
        }
    }
    FileDialog {
        id: openDialog
        title: qsTr("Open a garden")
        nameFilters: [qsTr("Gardens (*.underbough *.json)"), qsTr("All files (*)")]
        onAccepted: root.garden.open(selectedFile)
    }
    FileDialog {
        id: saveDialog
        title: qsTr("Save the garden")
        fileMode: FileDialog.SaveFile
        defaultSuffix: selectedNameFilter.index === 1 ? "json" : "underbough"
        nameFilters: [qsTr("Garden files (*.underbough)"), qsTr("JSON, for other programs (*.json)")]
        selectedFile: root.garden.suggestedFile
        onAccepted: {
            if (root.garden.saveAs(selectedFile))
                root.goOn()
        }
        onRejected: root.next = FileFlow.Nothing
    }
}
