import QtQuick
import QtQuick.Controls.Basic
import Underbough.Ui

/// A page that is rolled where it is longer than its room. What the keyboard comes to is brought into
/// sight.
ScrollView {
    id: root

    /// Its bar is always to be seen where there is more than the room shows.
    property bool showsBar: false
    /// Kept at the top while what is above it or below its head is laid out, until somebody rolls.
    property Item held: null
    /// It is longer than its room.
    readonly property bool rolls: contentHeight > availableHeight + 1

    contentWidth: availableWidth
    clip: true
    ScrollBar.horizontal.policy: ScrollBar.AlwaysOff
    ScrollBar.vertical.policy: showsBar && rolls ? ScrollBar.AlwaysOn : ScrollBar.AsNeeded

    /// Rolls as far as it takes to see `item` with its focus ring: its top, where it is too long.
    function show(item: Item) {
        root.held = null
        const page = root.contentItem as Flickable
        const top = item.mapToItem(page.contentItem, 0, 0).y - Theme.gap
        const end = top + item.height + 2 * Theme.gap
        const highest = Math.min(top, Math.max(page.contentY, end - root.availableHeight))
        page.contentY = Math.max(0, Math.min(highest, root.contentHeight - root.availableHeight))
    }

    /// Rolls `item` to the top, for what grows below its head now or soon.
    function showTop(item: Item) {
        root.held = item
        root.hold()
    }
    function hold() {
        if (!root.held)
            return
        const page = root.contentItem as Flickable
        const top = root.held.mapToItem(page.contentItem, 0, 0).y
        page.contentY = Math.max(0, Math.min(top, root.contentHeight - root.availableHeight))
    }

    /// A press must not move away what is pressed: then only what is mostly out of sight is fetched.
    function follow(item: Item) {
        const page = root.contentItem as Flickable
        let above = item
        while (above && above !== page.contentItem)
            above = above.parent
        if (!above || !root.rolls)
            return
        const middle = item.mapToItem(page, item.width / 2, item.height / 2).y
        const reason = (item as Control)?.focusReason ?? (item as TextField)?.focusReason ?? Qt.OtherFocusReason
        const isOut = middle < 0 || middle > root.availableHeight
        if (isOut || reason === Qt.TabFocusReason || reason === Qt.BacktabFocusReason)
            root.show(item)
    }

    onContentHeightChanged: root.hold()
    Connections {
        target: root.held
        function onYChanged() { root.hold() }
    }
    Connections {
        target: root.contentItem as Flickable
        function onMovementStarted() { root.held = null }
    }
    Connections {
        target: root.ScrollBar.vertical
        function onPressedChanged() { root.held = null }
    }
    Connections {
        target: root.Window.window
        function onActiveFocusItemChanged() {
            if (root.Window.window.activeFocusItem)
                root.follow(root.Window.window.activeFocusItem)
        }
    }
}
