pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// Whether the weather speaks against the work, from what the gardener writes down.
Card {
    id: root

    required property DayViewModel day

    objectName: "dayCard"
    question: qsTr("Is today a day for it?")
    headline: root.day.headline
    tone: root.day.tone

    RowLayout {
        Layout.fillWidth: true
        Layout.topMargin: 4
        spacing: Theme.gap

        Field {
            objectName: "dayAir"
            Layout.fillWidth: true
            label: qsTr("Warmth, shade")
            hint: root.day.airExample
            onTyped: (text) => root.day.air = text
        }
        Field {
            objectName: "dayHumidity"
            Layout.fillWidth: true
            label: qsTr("Humidity")
            hint: "50 %"
            onTyped: (text) => root.day.humidity = text
        }
        Field {
            objectName: "dayGust"
            Layout.fillWidth: true
            label: qsTr("Gusts")
            hint: root.day.gustExample
            onTyped: (text) => root.day.gust = text
        }
    }
    Repeater {
        model: root.day.findings
        Note {
            required property string modelData
            text: "\u2022 " + modelData
            color: Theme.ink
        }
    }
    Repeater {
        model: root.day.checks
        Note {
            required property string modelData
            text: modelData
        }
    }
}
