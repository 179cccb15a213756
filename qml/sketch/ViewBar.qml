import QtQuick
import Underbough.App
import Underbough.Ui

/// Above a picture of the tree: where one stands, what to do there, before or after the cuts. In one row,
/// or in as many as a small window needs.
Flow {
    id: root

    required property SideViewModel side
    /// Before the names of the two buttons that both pictures have.
    property string prefix: ""
    default property alias tools: row.data
    readonly property bool tight: Window.width < 1300 // not its own: the row would not be laid out anew
    readonly property real rest: width - row.implicitWidth - states.implicitWidth - 2 * spacing

    spacing: Theme.gap

    Item {
        width: root.rest >= 170 ? root.rest : Math.min(root.width, 338)
        height: walk.implicitHeight

        WalkRound {
            id: walk
            width: Math.min(parent.width, 338)
            side: root.side
        }
    }
    Row {
        id: row
        spacing: Theme.gap
    }
    Row {
        id: states
        leftPadding: Theme.gap // apart from what is done
        spacing: Theme.gap

        PlainButton {
            objectName: root.prefix ? root.prefix + "NowButton" : "nowButton"
            tight: root.tight
            text: qsTr("As it stands")
            checked: !root.side.showsAfter
            onClicked: root.side.showsAfter = false
        }
        PlainButton {
            objectName: root.prefix ? root.prefix + "AfterButton" : "afterButton"
            tight: root.tight
            text: qsTr("After the cuts")
            checked: root.side.showsAfter
            enabled: root.side.hasAfter
            onClicked: root.side.showsAfter = true
        }
    }
}
