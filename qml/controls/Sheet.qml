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
    /// What the window has to say just now; what it said before the form came is no matter of it.
    property string said: ""
    property string saidBefore: ""
    readonly property string refusal: said === saidBefore ? "" : said
    property int wantedWidth: 620
    default property alias parts: inside.data

    signal doneWanted

    modal: true
    onAboutToShow: root.saidBefore = root.said
    onSaidChanged: if (root.said.length === 0) root.saidBefore = ""
    anchors.centerIn: T.Overlay.overlay
    width: root.parent ? Math.min(root.wantedWidth, root.parent.width - 2 * Theme.gap) : root.wantedWidth
    height: root.parent ? Math.min(implicitHeight, root.parent.height - 2 * Theme.gap) : implicitHeight
    padding: Theme.margin
    leftPadding: Theme.margin - scroller.ring
    rightPadding: Theme.margin - scroller.ring
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
    contentItem: root.page

    readonly property Scroller page: Scroller {
        id: scroller

        /// Room for the ring of what has the focus.
        readonly property int ring: 5

        showsBar: true

        Item {
            id: inside
            x: scroller.ring
            width: scroller.availableWidth - 2 * scroller.ring - (scroller.rolls ? Theme.gap : 0)
            implicitHeight: children.length > 0 ? children[0].implicitHeight + scroller.ring : 0
        }
    }
    footer: RowLayout {
        spacing: Theme.gap

        Text {
            objectName: "sheetProblem"
            Layout.fillWidth: true
            Layout.leftMargin: Theme.margin
            Layout.bottomMargin: Theme.gap
            text: root.refusal || root.problem || root.remark
            font.pixelSize: Theme.small + 1
            color: root.refusal ? Theme.grave : root.problem ? Theme.ink : Theme.mind
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
