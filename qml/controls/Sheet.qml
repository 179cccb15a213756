import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic
import QtQuick.Templates as T
import Underbough.Ui

/// A form over the window: what to fill in, what is still missing, and the one button that does it.
Dialog {
    id: root

    required property string doneText
    /// What keeps it from being done; empty: nothing.
    property string problem: ""
    /// What is odd, though it can be done.
    property string remark: ""
    property bool canBeDone: problem.length === 0
    /// A form that does at once what is set in it has nothing to cancel.
    property bool hasCancel: true

    signal doneWanted

    modal: true
    anchors.centerIn: T.Overlay.overlay
    width: 620
    padding: Theme.margin
    closePolicy: Popup.CloseOnEscape

    background: Rectangle {
        radius: Theme.radius
        color: Theme.panel
        border.color: Theme.edge
    }
    header: Text {
        text: root.title
        padding: Theme.margin
        bottomPadding: 0
        font.pixelSize: Theme.heading
        font.weight: Font.DemiBold
        color: Theme.ink
        wrapMode: Text.WordWrap
    }
    footer: RowLayout {
        spacing: Theme.gap

        Text {
            objectName: "sheetProblem"
            Layout.fillWidth: true
            Layout.leftMargin: Theme.margin
            Layout.bottomMargin: Theme.gap
            text: root.problem || root.remark
            font.pixelSize: Theme.small + 1
            color: root.problem ? Theme.ink : Theme.mind
            wrapMode: Text.WordWrap
            Accessible.role: Accessible.AlertMessage
            Accessible.name: text
        }
        PlainButton {
            objectName: "sheetCancel"
            visible: root.hasCancel
            text: qsTr("Cancel")
            Layout.bottomMargin: Theme.margin
            Layout.topMargin: Theme.gap
            onClicked: root.close()
        }
        PlainButton {
            objectName: "sheetDone"
            primary: true
            text: root.doneText
            enabled: root.canBeDone
            Layout.rightMargin: Theme.margin
            Layout.bottomMargin: Theme.margin
            Layout.topMargin: Theme.gap
            onClicked: root.doneWanted()
        }
    }
}
