import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// What went wrong, in one sentence, until it is read.
Rectangle {
    id: root

    required property GardenViewModel garden

    visible: root.garden.problem.length > 0
    implicitHeight: visible ? row.implicitHeight + 2 * Theme.gap : 0
    color: Theme.panel
    border.color: Theme.grave
    Accessible.role: Accessible.AlertMessage
    Accessible.name: root.garden.problem

    RowLayout {
        id: row
        anchors { fill: parent; margins: Theme.gap; leftMargin: Theme.margin; rightMargin: Theme.margin }
        spacing: Theme.wide

        Text {
            objectName: "problemText"
            Layout.fillWidth: true
            text: root.garden.problem
            font.pixelSize: Theme.body
            color: Theme.grave
            wrapMode: Text.WordWrap
        }
        PlainButton {
            objectName: "problemButton"
            text: qsTr("I see")
            onClicked: root.garden.dismissProblem()
        }
    }
}
