pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Dialogs
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// The work on paper: the pages as they print, to save, to print, or to hand to an arborist.
Popup {
    id: root

    required property PaperViewModel paper

    modal: true
    focus: true
    padding: Theme.wide
    closePolicy: Popup.CloseOnEscape
    anchors.centerIn: root.parent
    width: root.parent ? Math.min(root.parent.width - (root.parent.width < 1000 ? 16 : 80), 980) : 980
    height: root.parent ? root.parent.height - (root.parent.height < 700 ? 16 : 40) : 700
    background: Rectangle {
        radius: Theme.radius
        color: Theme.window
        border.color: Theme.edge
    }
    onAboutToShow: root.paper.prepare()
    onOpened: pages.forceActiveFocus()

    FileDialog {
        id: saveDialog
        title: qsTr("Save the pages")
        fileMode: FileDialog.SaveFile
        defaultSuffix: "pdf"
        nameFilters: [qsTr("PDF (*.pdf)"), qsTr("Web page (*.html)")]
        selectedFile: root.paper.suggestedFile
        onAccepted: root.paper.save(selectedFile)
    }

    // A name to type, not a folder to pick: Qt's own picker can't take the folder that it shows.
    FileDialog {
        id: folderDialog
        title: qsTr("Name the folder for the pictures and tables")
        fileMode: FileDialog.SaveFile
        selectedFile: root.paper.suggestedFolder
        onAccepted: root.paper.saveParts(selectedFile)
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: Theme.gap

        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap

            PlainButton {
                objectName: "paperForGardener"
                text: qsTr("Work sheet")
                checked: !root.paper.forArborist
                onClicked: root.paper.forArborist = false
            }
            PlainButton {
                objectName: "paperForArborist"
                text: qsTr("For an arborist")
                checked: root.paper.forArborist
                onClicked: root.paper.forArborist = true
            }
            Choice {
                objectName: "paperOf"
                visible: root.paper.treeCount > 1
                label: qsTr("Of what")
                model: [qsTr("The chosen tree"), qsTr("The whole garden")]
                currentIndex: root.paper.wholeGarden ? 1 : 0
                Layout.fillWidth: true
                Layout.minimumWidth: 100
                Layout.preferredWidth: 170
                Layout.maximumWidth: 170
                onActivated: (index) => root.paper.wholeGarden = index === 1
            }
            Choice {
                objectName: "paperSize"
                label: qsTr("Paper")
                model: [qsTr("A4"), qsTr("US Letter")]
                currentIndex: root.paper.letter ? 1 : 0
                Layout.fillWidth: true
                Layout.minimumWidth: 80
                Layout.preferredWidth: 120
                Layout.maximumWidth: 120
                onActivated: (index) => root.paper.letter = index === 1
            }
            Item { Layout.fillWidth: true }
            PlainButton {
                objectName: "paperClose"
                text: qsTr("Close")
                onClicked: root.close()
            }
        }
        Note {
            objectName: "paperSaid"
            Layout.fillWidth: true
            visible: text.length > 0
            text: root.paper.said.length > 0 ? root.paper.said
                : root.paper.hire && !root.paper.forArborist
                ? qsTr("Some of this is an arborist's work: \u201cFor an arborist\u201d is one page to hand over.")
                : ""
        }
        ListView {
            id: pages
            objectName: "paperPages"
            Layout.fillWidth: true
            Layout.fillHeight: true
            clip: true
            spacing: Theme.wide
            boundsBehavior: Flickable.StopAtBounds
            model: root.paper.pageCount
            activeFocusOnTab: true
            Accessible.role: Accessible.Document
            Accessible.name: qsTr("%n pages: %1", "", root.paper.pageCount).arg(root.paper.title)
            Keys.onPressed: (event) => {
                const steps = { [Qt.Key_Down]: 60, [Qt.Key_Up]: -60, [Qt.Key_PageDown]: height,
                                [Qt.Key_PageUp]: -height, [Qt.Key_Space]: height,
                                [Qt.Key_Home]: -1e9, [Qt.Key_End]: 1e9 }
                const step = steps[event.key]
                if (step === undefined)
                    return
                contentY = Math.max(originY, Math.min(originY + Math.max(0, contentHeight - height), contentY + step))
                event.accepted = true
            }

            delegate: PaperDrawing {
                required property int index

                x: (pages.width - width) / 2
                width: Math.min(pages.width - 24, 860)
                height: width * root.paper.heightOfWidth
                paper: root.paper
                page: index
            }
            ScrollBar.vertical: ScrollBar { policy: ScrollBar.AsNeeded }

            FocusRing { around: pages }
            Text {
                anchors.centerIn: parent
                visible: root.paper.pageCount === 0
                text: root.paper.busy ? qsTr("Working it out\u2026") : qsTr("There is no tree to write about yet.")
                font.pixelSize: Theme.lead
                color: Theme.softInk
            }
        }
        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap

            PlainButton {
                objectName: "paperParts"
                text: qsTr("Pictures and tables\u2026")
                Accessible.description: qsTr("Each figure, the trees, visits and loads as CSV, the plan as GeoJSON")
                enabled: root.paper.pageCount > 0
                onClicked: folderDialog.open()
            }
            Item { Layout.fillWidth: true }
            PlainButton {
                objectName: "paperSave"
                text: qsTr("Save as PDF\u2026")
                enabled: root.paper.pageCount > 0
                onClicked: saveDialog.open()
            }
            PlainButton {
                objectName: "paperPrint"
                text: qsTr("Print\u2026")
                primary: true
                enabled: root.paper.pageCount > 0
                onClicked: root.paper.print()
            }
        }
    }
}
