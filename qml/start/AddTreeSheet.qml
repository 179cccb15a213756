import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// Adds a tree from what a tape and two eyes can tell: a first drawing to drag into shape.
Sheet {
    id: root

    required property AddTreeViewModel tree
    property bool measuring: false

    title: qsTr("Add a tree")
    doneText: qsTr("Add the tree")
    problem: root.tree.problem
    remark: root.tree.remark
    onAboutToShow: {
        root.measuring = false
        root.tree.reset()
    }
    onOpened: kind.field.forceActiveFocus(Qt.PopupFocusReason)
    onDoneWanted: {
        if (root.tree.add())
            root.close()
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: Theme.wide

        RowLayout {
            spacing: Theme.gap

            SearchField {
                id: kind
                objectName: "treeKind"
                Layout.fillWidth: true
                Layout.preferredWidth: 320
                label: qsTr("Kind of tree, common or Latin name")
                hint: qsTr("apple, silver birch, Acer\u2026")
                value: root.tree.typed
                found: root.tree.found
                settled: root.tree.species.length > 0
                onTyped: (text) => root.tree.typed = text
                onTaken: (index) => {
                    root.tree.takeSpecies(index)
                    stem.field.forceActiveFocus(Qt.TabFocusReason)
                }
                onPassed: stem.field.forceActiveFocus(Qt.TabFocusReason)
            }
            TypedField {
                objectName: "treeName"
                Layout.fillWidth: true
                Layout.preferredWidth: 220
                label: qsTr("What you call it")
                hint: root.tree.usualName
                value: root.tree.name
                onTyped: (text) => root.tree.name = text
            }
        }
        Note {
            text: root.tree.species ? qsTr("Known here as %1").arg(root.tree.species) : ""
        }
        RowLayout {
            spacing: Theme.gap

            NamedChoice {
                objectName: "treeByGirth"
                Layout.fillWidth: true
                Layout.maximumWidth: 150
                label: qsTr("Stem at breast height")
                model: [qsTr("Round it"), qsTr("Through it")]
                currentIndex: root.tree.byGirth ? 0 : 1
                onActivated: (index) => root.tree.byGirth = index === 0
            }
            TypedField {
                id: stem
                objectName: "treeStem"
                Layout.fillWidth: true
                label: root.tree.byGirth ? qsTr("Girth by tape") : qsTr("Diameter")
                value: root.tree.stem
                hint: root.tree.byGirth ? qsTr("round the bark") : qsTr("through the stem")
                onTyped: (text) => root.tree.stem = text
                onEntered: root.doneIfReady()
            }
            Text {
                Layout.preferredWidth: 145
                Layout.alignment: Qt.AlignBottom
                Layout.bottomMargin: 8
                text: root.tree.stemHint
                font.pixelSize: Theme.body
                color: Theme.softInk
                wrapMode: Text.WordWrap
            }
        }
        RowLayout {
            spacing: Theme.gap

            TypedField {
                objectName: "treeHeight"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                label: qsTr("Height")
                hint: root.tree.usualHeight ? qsTr("usually %1").arg(root.tree.usualHeight) : ""
                value: root.tree.height
                onTyped: (text) => root.tree.height = text
                onEntered: root.doneIfReady()
            }
            TypedField {
                objectName: "treeSpread"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                label: root.tree.isEspalier ? qsTr("Length along the wall") : qsTr("Spread of the crown")
                hint: root.tree.usualSpread ? qsTr("usually %1").arg(root.tree.usualSpread) : ""
                value: root.tree.spread
                onTyped: (text) => root.tree.spread = text
                onEntered: root.doneIfReady()
            }
            TypedField {
                objectName: "treeLowest"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                label: qsTr("Lowest limb, above the ground")
                hint: root.tree.usualLowestLimb ? qsTr("usually %1").arg(root.tree.usualLowestLimb) : ""
                value: root.tree.lowestLimb
                onTyped: (text) => root.tree.lowestLimb = text
                onEntered: root.doneIfReady()
            }
        }
        PlainButton {
            objectName: "measureButton"
            text: root.measuring ? qsTr("Hide the helpers") : qsTr("How high is it?")
            Accessible.description: qsTr("Height by the shadow of a stick, or by an angle and a distance")
            onClicked: root.measuring = !root.measuring
        }
        HeightHelper {
            visible: root.measuring
            Layout.fillWidth: true
            tree: root.tree
        }
        RowLayout {
            spacing: Theme.gap

            NamedChoice {
                objectName: "treeHabit"
                Layout.fillWidth: true
                label: qsTr("How it grows or was trained")
                model: root.tree.habits
                currentIndex: root.tree.habit
                onActivated: (index) => root.tree.habit = index
            }
            TypedField {
                objectName: "treeAlong"
                visible: root.tree.isEspalier
                Layout.maximumWidth: 130
                label: qsTr("Runs towards, degrees")
                value: root.tree.along
                onTyped: (text) => root.tree.along = text
            }
        }
        RowLayout {
            spacing: Theme.gap

            TypedField {
                objectName: "treeEast"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                label: qsTr("Stands east of the plan's middle by")
                value: root.tree.east
                help: qsTr("Or drag the tree on the plan later")
                onTyped: (text) => root.tree.east = text
            }
            TypedField {
                objectName: "treeNorth"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                label: qsTr("and north by")
                value: root.tree.north
                help: qsTr("Or drag the tree on the plan later")
                onTyped: (text) => root.tree.north = text
            }
        }
        Note { text: qsTr("A measure left empty takes the usual one. Every limb can be dragged afterwards, and the tree on the plan.") }
    }

    function doneIfReady() {
        if (root.canBeDone)
            root.doneWanted()
    }
}
