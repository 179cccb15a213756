pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// A year of light on one place: its months, who takes the light, what a cut would give back.
Card {
    id: root

    required property LightViewModel light
    required property WhyViewModel why

    objectName: "yearCard"
    question: qsTr("How is the light over the year?")
    headline: root.light.headline
    tone: root.light.tone
    stale: root.light.isBusy || root.light.isStopped
    working: root.light.isBusy

    component Heading: Text {
        Layout.fillWidth: true
        Layout.topMargin: Theme.gap
        font.pixelSize: Theme.small
        font.weight: Font.DemiBold
        color: Theme.softInk
        wrapMode: Text.WordWrap
    }

    Choice {
        objectName: "placeChoice"
        Layout.fillWidth: true
        visible: root.light.places.length > 1
        label: qsTr("Planting")
        model: root.light.places
        currentIndex: root.light.place
        onActivated: (index) => root.light.place = index
    }
    MonthBars {
        objectName: "monthBars"
        Layout.fillWidth: true
        Layout.topMargin: Theme.gap
        visible: root.light.place >= 0
        months: root.light.months
        need: root.light.need
        good: root.light.good
        onWhyWanted: (why) => root.why.ask(why)
    }
    Note {
        visible: root.light.place >= 0
        text: root.light.needText.length > 0
              ? qsTr("Bars: direct sun a day; outlines: in the open. Long dashes: %1; short ones: where it does well. Press a month to see why.").arg(root.light.needText)
              : qsTr("Bars: direct sun a day; outlines: in the open. Press a month to see why.")
    }
    Heading {
        visible: takenList.count > 0
        text: qsTr("Without it, more sun a day")
    }
    Repeater {
        id: takenList
        model: root.light.taken
        FactRow {
            onChosen: (id) => root.light.choose(id)
            onWhyWanted: (why) => root.why.ask(why)
        }
    }
    Heading {
        visible: cutList.count > 0
        text: qsTr("What a cut alone gives, for what share of its leaf: the cheapest hour first")
    }
    Repeater {
        id: cutList
        model: root.light.cuts
        FactRow {
            onChosen: (id) => root.light.choose(id)
            onWhyWanted: (why) => root.why.ask(why)
        }
    }
    Note {
        Layout.topMargin: Theme.gap
        visible: text.length > 0
        text: root.light.weather
    }
}
