pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.Ui

/// What to do first in a garden without trees, in place of an empty drawing.
Item {
    id: root

    signal treeWanted
    signal planWanted

    implicitHeight: column.implicitHeight

    ColumnLayout {
        id: column
        anchors.centerIn: parent
        width: Math.min(parent.width - 2 * Theme.margin, 560)
        spacing: Theme.wide

        Text {
            Layout.fillWidth: true
            text: qsTr("Nothing grows here yet")
            font.pixelSize: Theme.heading
            font.weight: Font.DemiBold
            color: Theme.ink
        }
        Repeater {
            model: [qsTr("1. Add a tree: its kind, and the girth of its stem by tape. A first drawing comes of it."),
                    qsTr("2. Draw on the plan what lies under and beside it: paths, hedges, beds, buildings, wires."),
                    qsTr("3. Drag the limbs into shape from the side. Loads, headroom and light answer as you drag.")]

            Text {
                required property string modelData
                Layout.fillWidth: true
                text: modelData
                font.pixelSize: Theme.lead
                color: Theme.ink
                wrapMode: Text.WordWrap
            }
        }
        RowLayout {
            spacing: Theme.gap

            PlainButton {
                objectName: "firstTreeButton"
                primary: true
                text: qsTr("Add a tree")
                onClicked: root.treeWanted()
            }
            PlainButton {
                objectName: "firstPlanButton"
                text: qsTr("Draw on the plan")
                onClicked: root.planWanted()
            }
        }
    }
}
