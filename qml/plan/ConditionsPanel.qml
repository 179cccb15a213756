import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// The weather and the light that the answers are for.
ColumnLayout {
    id: root

    required property ConditionsViewModel conditions

    spacing: 2

    component Setting: RowLayout {
        id: setting
        required property string title
        required property string value
        Layout.fillWidth: true
        Text {
            text: setting.title
            font.pixelSize: Theme.body
            color: Theme.softInk
        }
        Text {
            Layout.fillWidth: true
            horizontalAlignment: Text.AlignRight
            text: setting.value
            font.pixelSize: Theme.body
            font.weight: Font.DemiBold
            color: Theme.ink
            elide: Text.ElideLeft
        }
    }

    Setting {
        title: qsTr("Gusts")
        value: root.conditions.gustText
    }
    Slide {
        objectName: "gustSlide"
        Layout.fillWidth: true
        label: qsTr("Gusts at 10 m over open ground")
        valueText: root.conditions.gustText + ", " + root.conditions.gustWord
        from: 0
        to: root.conditions.greatestGust
        stepSize: 1
        value: root.conditions.gust
        onMoved: root.conditions.gust = value
    }
    Text {
        objectName: "gustWord"
        text: root.conditions.gustWord
        font.pixelSize: Theme.small
        color: Theme.softInk
        Layout.bottomMargin: Theme.gap
    }
    Setting {
        title: qsTr("Day")
        value: root.conditions.dayText
    }
    Slide {
        objectName: "daySlide"
        Layout.fillWidth: true
        label: qsTr("Day of the year")
        valueText: root.conditions.dayText
        from: 1
        to: root.conditions.daysInYear
        stepSize: 1
        value: root.conditions.dayOfYear
        onMoved: root.conditions.dayOfYear = value
    }
    Setting {
        title: qsTr("Hour")
        value: root.conditions.hourText
    }
    Slide {
        objectName: "hourSlide"
        Layout.fillWidth: true
        label: qsTr("Hour of the day")
        valueText: root.conditions.hourText + ". " + root.conditions.sunText
        from: 0
        to: 24
        stepSize: 0.25
        value: root.conditions.hour
        onMoved: root.conditions.hour = value
    }
    Text {
        objectName: "sunText"
        Layout.fillWidth: true
        text: root.conditions.sunText
        font.pixelSize: Theme.small
        color: Theme.softInk
        elide: Text.ElideRight
    }
    Item { Layout.fillHeight: true }
}
