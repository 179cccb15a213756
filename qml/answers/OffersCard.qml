pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// What more and less of the leaf would buy, one thing at a time: as a curve, and in words.
Card {
    id: root

    required property OffersViewModel offers

    readonly property bool hasCurve: root.offers.shown && root.offers.subject >= 0
    /// Asked for, and its curve not there yet.
    property bool awaited: false

    /// What was asked for is there, below the head.
    signal unfolded()

    onHasCurveChanged: {
        if (root.awaited && root.hasCurve) {
            root.awaited = false
            root.unfolded()
        }
    }

    objectName: "offersCard"
    question: qsTr("What would more or less leaf buy?")
    headline: root.offers.shown ? root.offers.headline : ""
    tone: Tone.Plain
    stale: root.offers.shown && root.offers.isStale
    working: root.offers.isBusy

    PlainButton {
        objectName: "showOffers"
        text: root.offers.shown ? qsTr("Put it away") : qsTr("Weigh it")
        Accessible.description: qsTr("Headroom, relief and sun for 5, 10, 15 % of the leaf and more, each by itself")
        onClicked: {
            root.awaited = !root.offers.shown
            root.offers.shown = !root.offers.shown
        }
    }
    WorkingLine {
        Layout.fillWidth: true
        busy: root.offers.shown && root.offers.isBusy
        label: qsTr("Weighing leaf against what it buys")
        onStopWanted: root.offers.stop()
    }
    Choice {
        objectName: "offerSubject"
        Layout.fillWidth: true
        Layout.topMargin: Theme.gap
        visible: root.offers.shown && root.offers.subjects.length > 1
        label: qsTr("What is bought")
        model: root.offers.subjects
        currentIndex: root.offers.subject
        onActivated: (index) => root.offers.subject = index
    }
    OfferCurve {
        objectName: "offerCurve"
        Layout.fillWidth: true
        Layout.topMargin: Theme.gap
        visible: root.hasCurve
        offers: root.offers
    }
    Repeater {
        model: root.offers.points

        RowLayout {
            id: line

            required property string sentence
            required property bool taken
            required property bool proven

            visible: root.hasCurve
            Layout.fillWidth: true
            spacing: Theme.gap

            Item {
                implicitWidth: 18
                implicitHeight: 18
                Layout.alignment: Qt.AlignTop

                OfferMark {
                    anchors.centerIn: parent
                    large: false
                    taken: line.taken
                    proven: line.proven
                }
            }
            Note {
                text: line.sentence
                color: Theme.ink
                font.weight: line.taken ? Font.DemiBold : Font.Normal
            }
        }
    }
    Note {
        Layout.topMargin: Theme.gap
        visible: root.hasCurve
        text: qsTr("Each point is the best that was found for so much leaf, inside the guideline. Press one to try its cuts on the drawing. A square says that the search was cut short: less leaf may do as much.")
    }
}
