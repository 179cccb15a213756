import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// The tree from the side or all round, over the garden from above and the weather.
SplitView {
    id: root

    required property GardenViewModel garden
    required property SideViewModel side
    required property RoundViewModel round
    required property LimbShapeViewModel limbShape
    required property UnderlayViewModel underlay
    required property PlanViewModel plan
    required property PlanEditorViewModel planEditor
    required property ThingViewModel thing
    required property LightViewModel light
    required property ConditionsViewModel conditions
    /// The tree is shown in three dimensions instead of from the side.
    required property bool showsRound
    /// Little height, or so little width that plan and weather stand one under the other.
    required property bool low
    required property bool narrow
    /// The wheel rolls the window's page; with Ctrl it zooms.
    required property bool wheelRolls

    /// What it needs where it does not fill the window.
    readonly property real ownHeight: (root.planEditor.editing ? 0 : root.sideHeight + Theme.wide) + root.planHeight
    /// No more than a window can show of it at once, but where the limb's figures stand under it.
    readonly property real sideHeight: root.width >= 682 ? Math.max(340, Math.min(640, 0.72 * Window.height)) : 580
    readonly property real planHeight: root.planEditor.editing ? 520 + Theme.wide + 440 : 300 + Theme.wide + 260

    readonly property alias treePanel: treePanel
    readonly property alias planPanel: planPanel
    readonly property alias weatherPanel: weatherPanel

    signal roundWanted(bool shown)
    signal limbFactsWanted
    signal gardenFactsWanted
    signal treeWanted

    orientation: Qt.Vertical
    handle: Item {
        implicitHeight: Theme.wide

        Rectangle {
            anchors.centerIn: parent
            width: 44
            height: 4
            radius: 2
            color: Theme.edge
        }
    }

    Panel {
        id: treePanel
        visible: !root.planEditor.editing
        SplitView.fillHeight: !root.planEditor.editing
        SplitView.minimumHeight: root.narrow ? root.sideHeight : 280

        SidePage {
            id: sidePage
            anchors { fill: parent; margins: 1 }
            visible: root.garden.trees.length > 0 && !root.showsRound
            side: root.side
            shape: root.limbShape
            underlay: root.underlay
            wheelRolls: root.wheelRolls
            onLimbFactsWanted: root.limbFactsWanted()
            onRoundWanted: root.roundWanted(true)
        }
        Loader {
            id: roundLoader
            anchors { fill: parent; margins: 1 }
            active: root.showsRound
            visible: root.garden.trees.length > 0
            Component.onCompleted: roundLoader.setSource(
                Qt.resolvedUrl("../round/RoundPage.qml"),
                { "round": root.round, "side": root.side, "objectName": "roundPage" })
        }
        Binding {
            target: roundLoader.item
            property: "wheelRolls"
            value: root.wheelRolls
            when: roundLoader.status === Loader.Ready
        }
        Connections {
            target: roundLoader.item as RoundPage
            function onLimbFactsWanted() { root.limbFactsWanted() }
            function onSideWanted() {
                root.roundWanted(false)
                sidePage.takeFocus()
            }
        }
        FirstSteps {
            anchors.fill: parent
            visible: root.garden.trees.length === 0
            onTreeWanted: root.treeWanted()
            onPlanWanted: root.planEditor.editing = true
        }
    }
    GridLayout {
        SplitView.fillHeight: root.planEditor.editing
        SplitView.preferredHeight: root.narrow ? root.planHeight : root.low ? 216 : 268
        SplitView.minimumHeight: root.narrow ? root.planHeight : root.low ? 200 : 250
        columns: root.narrow ? 1 : 2
        columnSpacing: Theme.wide
        rowSpacing: Theme.wide

        Panel {
            id: planPanel
            Layout.fillWidth: true
            Layout.fillHeight: true

            ColumnLayout {
                anchors { fill: parent; margins: 1 }
                spacing: 0

                PlanTools {
                    visible: root.planEditor.editing
                    Layout.fillWidth: true
                    Layout.margins: Theme.gap
                    editor: root.planEditor
                }
                PlanPage {
                    objectName: "planDrawing"
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    plan: root.plan
                    side: root.side
                    light: root.light
                    editor: root.planEditor
                    wheelRolls: root.wheelRolls
                    onGardenFactsWanted: root.gardenFactsWanted()
                }
            }
        }
        Panel {
            id: weatherPanel
            Layout.fillWidth: root.narrow
            Layout.preferredWidth: 330
            Layout.fillHeight: !root.narrow
            Layout.preferredHeight: root.planEditor.editing ? 440 : 260

            ThingPanel {
                anchors { fill: parent; margins: Theme.wide }
                visible: root.planEditor.editing
                editor: root.planEditor
                thing: root.thing
            }
            ConditionsPanel {
                anchors { fill: parent; margins: root.low ? Theme.gap : Theme.wide }
                visible: !root.planEditor.editing
                conditions: root.conditions
            }
        }
    }
}
