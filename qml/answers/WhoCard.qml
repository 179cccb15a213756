pragma ComponentBehavior: Bound
import QtQuick
import Underbough.App
import Underbough.Ui

/// Whether it is a job for the gardener, and why.
Card {
    id: root

    required property WorkViewModel work
    required property WhyViewModel why

    objectName: "whoCard"
    visible: root.work.who.length > 0
    question: qsTr("Me, or a professional?")
    headline: root.work.who
    tone: root.work.whoTone
    stale: !root.work.isCurrent

    Repeater {
        model: root.work.whoReasons
        Note {
            required property string modelData
            text: "\u2022 " + modelData
            font.pixelSize: Theme.small + 1
            color: Theme.ink
        }
    }
    WhyButton {
        objectName: "whyWho"
        text: qsTr("Why? The rules and who wrote them")
        onClicked: root.why.ask(root.why.whoKey)
    }
}
