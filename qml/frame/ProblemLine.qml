import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// What went wrong, in one sentence, until it is read. It lies over the page, so that nothing moves under
/// a hand that is drawing.
Rectangle {
    id: root

    required property GardenViewModel garden

    visible: root.garden.problem.length > 0
    implicitHeight: row.implicitHeight + 2 * Theme.gap
    radius: Theme.radius
    color: Theme.panel
    border.width: 2
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
