import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// Two ways to the height of a tree from the ground.
Panel {
    id: root

    required property AddTreeViewModel tree
    readonly property string byShadow: root.tree.heightByShadow(stick.value, stickShadow.value, treeShadow.value)
    readonly property string byAngle: root.tree.heightByAngle(angle.value, distance.value, eye.value)

    implicitHeight: column.implicitHeight + 2 * Theme.gap

    component Measure: TypedField {
        id: measure
        Layout.fillWidth: true
        value: ""
        onTyped: (text) => measure.value = text
    }
    component Take: PlainButton {
        required property string height_
        Layout.alignment: Qt.AlignBottom
        Layout.preferredWidth: 140
        enabled: height_.length > 0
        text: height_ ? qsTr("Use %1").arg(height_) : qsTr("Use it")
    }

    ColumnLayout {
        id: column
        anchors { left: parent.left; right: parent.right; top: parent.top; margins: Theme.gap }
        spacing: Theme.gap

        RowLayout {
            spacing: Theme.gap

            Measure { id: stick; objectName: "stick"; label: qsTr("An upright stick") }
            Measure { id: stickShadow; objectName: "stickShadow"; label: qsTr("Its shadow") }
            Measure { id: treeShadow; objectName: "treeShadow"; label: qsTr("The tree's shadow") }
            Take { objectName: "useShadow"; height_: root.byShadow; onClicked: root.tree.height = root.byShadow }
        }
        RowLayout {
            spacing: Theme.gap

            Measure { id: angle; objectName: "angle"; label: qsTr("Angle to the top, \u00b0") }
            Measure { id: distance; objectName: "distance"; label: qsTr("Distance to the stem") }
            Measure { id: eye; objectName: "eyeHeight"; label: qsTr("Your eye's height") }
            Take { objectName: "useAngle"; height_: root.byAngle; onClicked: root.tree.height = root.byAngle }
        }
        Note { text: qsTr("Both want level ground, and a top that stands over the stem.") }
    }
}
