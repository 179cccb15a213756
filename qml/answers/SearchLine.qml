import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// Over the answers while cuts and light are being worked out, once that has taken longer than a blink:
/// stops it; and takes it up again. It lies over the page, so that nothing moves.
Rectangle {
    id: root

    required property AnswersViewModel answers
    required property LightViewModel light

    readonly property bool busy: root.answers.isBusy || root.light.isBusy
    readonly property bool stopped: !root.busy && (root.answers.isStopped || root.light.isStopped)
    readonly property bool wanted: root.stopped || root.busy && line.late

    visible: root.wanted
    implicitHeight: rows.implicitHeight + 2 * Theme.gap
    radius: Theme.radius
    color: Theme.panel
    border.width: 1
    border.color: Theme.softInk
    Accessible.role: Accessible.StatusBar
    Accessible.name: words.text

    ColumnLayout {
        id: rows
        anchors { left: parent.left; right: parent.right; top: parent.top; margins: Theme.gap
                  leftMargin: Theme.wide }
        spacing: 2

        Text {
            id: words
            objectName: "searchText"
            Layout.fillWidth: true
            text: !root.stopped ? line.label
                : root.answers.isStopped ? qsTr("Stopped. Cuts, sun and ranges are not those of what is drawn now.")
                                         : qsTr("Stopped. The light over the year is not that of what is drawn now.")
            font.pixelSize: Theme.small
            color: Theme.ink
            wrapMode: Text.WordWrap
        }
        WorkingLine {
            id: line
            Layout.fillWidth: true
            busy: root.busy
            label: root.answers.isBusy ? qsTr("Looking for the least that has to go\u2026")
                                       : qsTr("Reckoning the light over the year\u2026")
            onStopWanted: {
                root.answers.stop()
                root.light.stop()
            }
        }
        PlainButton {
            objectName: "goOn"
            Layout.alignment: Qt.AlignRight
            visible: root.stopped
            tight: true
            text: qsTr("Work it out")
            Accessible.description: words.text
            onClicked: {
                root.answers.goOn()
                root.light.goOn()
            }
        }
    }
}
