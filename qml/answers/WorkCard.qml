pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// What to cut: the cuts in working order, and what they take of the leaf.
Card {
    id: root

    required property WorkViewModel work
    required property WhyViewModel why

    objectName: "workCard"
    question: qsTr("What would I cut?")
    headline: root.work.outcome
    tone: root.work.outcomeTone
    stale: !root.work.isCurrent

    LeafGauge {
        Layout.fillWidth: true
        Layout.topMargin: 4
        visible: root.work.isKnown
        taken: root.work.leafShare
        allowed: root.work.allowance
        label: root.work.leafText
    }
    WhyButton {
        objectName: "whyCuts"
        visible: root.work.isKnown && root.work.leafShare > 0
        Accessible.description: root.work.leafText
        onClicked: root.why.ask(root.why.cutsKey)
    }
    Repeater {
        model: root.work.allowanceReasons
        Note {
            required property string modelData
            text: modelData
        }
    }
    Repeater {
        model: root.work.cuts
        CutRow {
            onChosen: (id) => root.work.choose(id)
            onLeaveAsked: (id) => root.work.goals.keep(id)
            onTakeAsked: (id) => root.work.goals.lose(id)
            onWhyAsked: root.why.askCut(number - 1)
        }
    }
    Repeater {
        model: root.work.notes
        Note {
            required property string modelData
            text: "\u2022 " + modelData
            color: Theme.ink
        }
    }
    Repeater {
        model: root.work.binding
        Note {
            required property string modelData
            text: modelData
            color: Theme.grave
        }
    }
    Note {
        text: root.work.proof
        Layout.topMargin: 4
    }
}
