pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// One cut of the plan: was it made, made otherwise, or left?
ColumnLayout {
    id: root

    required property TickModel ticks
    required property int index
    required property int number
    required property string instruction
    required property string amountLabel
    required property int tickState
    required property string amount

    readonly property bool changed: root.tickState === 2

    Layout.fillWidth: true
    spacing: 2

    Tick {
        objectName: "tick" + root.index
        Layout.fillWidth: true
        text: root.number + ". " + root.instruction
        checked: root.tickState !== 0
        onToggled: root.ticks.setTick(root.index, checked ? 1 : 0)
    }
    RowLayout {
        Layout.leftMargin: 28
        Layout.fillWidth: true
        visible: root.tickState !== 0
        spacing: Theme.gap

        Tick {
            objectName: "changed" + root.index
            text: qsTr("made otherwise")
            checked: root.changed
            onToggled: root.ticks.setTick(root.index, checked ? 2 : 1)
        }
        Field {
            objectName: "amount" + root.index
            Layout.fillWidth: true
            visible: root.changed
            label: root.amountLabel
            text: root.amount
            onTyped: (text) => root.ticks.setAmount(root.index, text)
        }
    }
}
