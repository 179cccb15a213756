import QtQuick
import QtQuick.Layouts
import Underbough.Ui

/// One question and its answer.
Rectangle {
    id: root

    /// The gardener's question.
    required property string question
    /// The answer in a sentence.
    required property string headline
    /// One of Tone.
    required property int tone
    /// The figures are of what was shown before the last change.
    property bool stale: false
    /// They are being worked out anew; else that was stopped.
    property bool working: root.stale
    default property alias content: body.data

    implicitHeight: column.implicitHeight + 2 * Theme.wide
    radius: Theme.radius
    color: Theme.panel
    border.color: Theme.edge
    Accessible.role: Accessible.Grouping
    Accessible.name: question
    Accessible.description: headline

    Rectangle {
        width: 4
        height: parent.height - 2 * Theme.wide
        y: Theme.wide
        x: 0
        radius: 2
        color: Theme.toneInk(root.tone)
        visible: root.tone !== 0
    }

    ColumnLayout {
        id: column
        anchors { left: parent.left; right: parent.right; top: parent.top; margins: Theme.wide }
        spacing: Theme.gap

        RowLayout {
            Layout.fillWidth: true
            Text {
                Layout.fillWidth: true
                text: root.question
                font.pixelSize: Theme.lead
                font.weight: Font.DemiBold
                color: Theme.ink
                wrapMode: Text.WordWrap
            }
            Text {
                text: root.stale && !root.working ? qsTr("stopped") : qsTr("working\u2026")
                font.pixelSize: Theme.small
                color: Theme.softInk
                opacity: root.stale ? 1 : 0
                Behavior on opacity { NumberAnimation { duration: 300 } }
            }
        }
        Text {
            Layout.fillWidth: true
            text: root.headline
            visible: text.length > 0
            font.pixelSize: Theme.body
            color: Theme.toneInk(root.tone)
            wrapMode: Text.WordWrap
            lineHeight: 1.15
        }
        ColumnLayout {
            id: body
            Layout.fillWidth: true
            spacing: 2
            opacity: root.stale ? 0.6 : 1
            Behavior on opacity { NumberAnimation { duration: 200 } }
        }
    }
}
