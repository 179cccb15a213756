import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic
import Underbough.App
import Underbough.Ui

/// One fact: what it is about, its figure, the figure after the cuts. Opens to the whole sentence.
AbstractButton {
    id: root

    required property string subject
    required property string figure
    required property string after
    required property string sentence
    required property int tone
    required property string factId
    required property real measure
    required property string why

    signal chosen(string id)
    /// The chain behind the figure is wanted.
    signal whyWanted(string why)

    property bool open: false

    Layout.fillWidth: true
    padding: 5
    implicitHeight: implicitContentHeight + topPadding + bottomPadding
    Accessible.name: subject + ": " + figure + (after ? ", " + qsTr("after the cuts %1").arg(after) : "")
    Accessible.description: sentence

    onClicked: {
        root.open = !root.open
        if (root.factId)
            root.chosen(root.factId)
    }

    background: Rectangle {
        radius: 5
        color: root.hovered || root.open ? Theme.hover : "transparent"

        FocusRing { around: root }
    }

    contentItem: ColumnLayout {
        spacing: 4

        RowLayout {
            Layout.fillWidth: true
            Layout.leftMargin: 1
            Layout.rightMargin: 1
            spacing: Theme.gap

            Text {
                Layout.fillWidth: true
                text: root.subject
                font.pixelSize: Theme.body
                color: Theme.ink
                wrapMode: Text.Wrap
                maximumLineCount: 3
                elide: Text.ElideRight
            }
            Text {
                text: root.figure
                font.pixelSize: Theme.body
                font.weight: Font.DemiBold
                color: Theme.toneInk(root.tone)
            }
            Text {
                visible: root.after.length > 0
                text: "\u2192 " + root.after
                font.pixelSize: Theme.body
                color: Theme.softInk
            }
        }
        Rectangle {
            Layout.fillWidth: true
            Layout.leftMargin: 1
            Layout.rightMargin: 1
            implicitHeight: 3
            radius: 1.5
            color: Theme.edge
            visible: root.measure >= 0

            Rectangle {
                width: parent.width * Math.min(1, Math.max(0, root.measure))
                height: parent.height
                radius: parent.radius
                color: root.tone === Tone.Plain ? Theme.accent : Theme.toneInk(root.tone)
            }
        }
        Text {
            Layout.fillWidth: true
            Layout.leftMargin: 1
            Layout.rightMargin: 1
            visible: root.open
            text: root.sentence
            font.pixelSize: Theme.small + 1
            color: Theme.softInk
            wrapMode: Text.WordWrap
            lineHeight: 1.15
        }
        WhyButton {
            objectName: "why-" + root.why
            visible: root.open && root.why.length > 0
            Accessible.description: root.subject
            onClicked: root.whyWanted(root.why)
        }
    }
}
