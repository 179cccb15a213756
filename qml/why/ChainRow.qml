import QtQuick
import QtQuick.Layouts
import Underbough.Ui

/// One row of a chain: a heading, a remark, or a step with its figure and where that comes from.
Item {
    id: root

    required property string heading
    required property string remark
    required property string stepName
    required property string stepValue
    required property string origin

    readonly property bool isHeading: root.heading.length > 0

    width: ListView.view ? ListView.view.width : 0
    implicitHeight: column.implicitHeight + (root.isHeading ? Theme.wide : Theme.gap)
    activeFocusOnTab: !root.isHeading
    Accessible.role: root.isHeading ? Accessible.Heading : Accessible.StaticText
    Accessible.name: root.heading + root.remark + root.stepName
                     + (root.stepValue.length > 0 ? ": " + root.stepValue : "")
    Accessible.description: root.origin

    FocusRing { around: root }
    Rectangle {
        width: parent.width
        height: 1
        color: Theme.edge
        visible: root.isHeading
    }
    ColumnLayout {
        id: column
        width: parent.width
        y: root.isHeading ? Theme.wide / 2 : Theme.gap / 2
        spacing: 1

        Text {
            Layout.fillWidth: true
            visible: root.isHeading
            text: root.heading
            font.pixelSize: Theme.body
            font.weight: Font.DemiBold
            color: Theme.ink
            wrapMode: Text.WordWrap
        }
        Note {
            text: root.remark
            color: Theme.ink
            font.pixelSize: Theme.small + 1
        }
        RowLayout {
            Layout.fillWidth: true
            visible: root.stepName.length > 0
            spacing: Theme.gap

            Text {
                Layout.fillWidth: true
                text: root.stepName
                font.pixelSize: Theme.small + 1
                color: Theme.ink
                wrapMode: Text.WordWrap
            }
            Text {
                Layout.alignment: Qt.AlignTop
                text: root.stepValue
                font.pixelSize: Theme.small + 1
                font.weight: Font.DemiBold
                color: Theme.ink
            }
        }
        Note { text: root.origin }
    }
}
