pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// What the tints of the limbs mean, in words and numbers.
ColumnLayout {
    id: root

    required property SideViewModel side

    spacing: 3
    Accessible.role: Accessible.Note
    Accessible.name: root.side.loadSummary

    Text {
        text: qsTr("Strength asked of a limb")
        font.pixelSize: Theme.small
        font.weight: Font.DemiBold
        color: Theme.softInk
        Layout.bottomMargin: 2
    }
    Repeater {
        model: root.side.loadWords

        RowLayout {
            id: step

            required property int index
            required property string modelData

            spacing: 8

            Rectangle {
                implicitWidth: 20
                implicitHeight: 11
                radius: 3
                color: Theme.drawing.loads[step.index]
                border.color: Theme.ink
                border.width: 1
            }
            Text {
                text: step.modelData
                font.pixelSize: Theme.small
                color: Theme.ink
            }
            Text {
                text: root.side.loadRanges[step.index]
                font.pixelSize: Theme.small
                color: Theme.softInk
            }
        }
    }
}
