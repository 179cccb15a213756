pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic
import Underbough.Ui

/// One cut of the suggestion, with the number that marks it on the drawing.
AbstractButton {
    id: root

    required property int number
    required property string kind
    required property string instruction
    required property string measures
    required property string who
    required property list<string> reasons
    required property list<string> notes
    required property string limbId
    required property int tone
    required property bool removes

    signal chosen(string id)
    /// The gardener would rather leave this limb, or take it whatever else is done.
    signal leaveAsked(string id)
    signal takeAsked(string id)
    /// Why so much leaf, and so heavy.
    signal whyAsked

    Layout.fillWidth: true
    padding: 7
    implicitHeight: implicitContentHeight + topPadding + bottomPadding
    Accessible.name: qsTr("Cut %1, %2: %3").arg(root.number).arg(root.kind).arg(root.instruction)
    Accessible.description: root.measures + " " + root.who

    onClicked: root.chosen(root.limbId)

    background: Rectangle {
        radius: 6
        color: root.hovered ? Theme.hover : "transparent"

        FocusRing { around: root }
    }
    contentItem: RowLayout {
        spacing: Theme.gap + 2

        Rectangle {
            Layout.alignment: Qt.AlignTop
            implicitWidth: 24
            implicitHeight: 24
            radius: 12
            color: Theme.drawing.cut

            Text {
                anchors.centerIn: parent
                text: root.number
                font.pixelSize: Theme.small
                font.weight: Font.DemiBold
                color: Theme.paper
            }
        }
        ColumnLayout {
            Layout.fillWidth: true
            spacing: 2

            Text {
                Layout.fillWidth: true
                text: root.instruction
                font.pixelSize: Theme.body
                color: Theme.ink
                wrapMode: Text.WordWrap
            }
            Note { text: root.kind + ". " + root.measures }
            Note {
                text: root.who
                color: Theme.toneInk(root.tone)
                font.weight: Font.DemiBold
            }
            RowLayout {
                spacing: Theme.gap

                PlainButton {
                    objectName: "leave-" + root.limbId
                    text: qsTr("Leave it")
                    font.pixelSize: Theme.small
                    Accessible.name: qsTr("Leave this limb, and find other cuts")
                    onClicked: root.leaveAsked(root.limbId)
                }
                PlainButton {
                    objectName: "take-" + root.limbId
                    visible: root.removes
                    text: qsTr("Take it anyway")
                    font.pixelSize: Theme.small
                    Accessible.name: qsTr("Take this limb whatever else is cut")
                    onClicked: root.takeAsked(root.limbId)
                }
                WhyButton {
                    objectName: "whyCut" + root.number
                    text: qsTr("Why?")
                    Accessible.name: qsTr("Why this number?")
                    Accessible.description: root.measures
                    onClicked: root.whyAsked()
                }
            }
            Repeater {
                model: root.notes
                Note {
                    required property string modelData
                    text: modelData
                }
            }
        }
    }
}
