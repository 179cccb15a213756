import QtQuick
import Underbough.Ui

/// A handle on a drawing. A finger takes it within half its size, a mouse or a pen only where it is
/// drawn; where handles lie over each other, the one that is nearest is taken.
Item {
    id: root

    /// Where a mouse finds it, from its middle.
    property real aim: 15
    /// A mouse points at it, or it is held.
    readonly property bool hot: area.pressed || (area.containsMouse && root.isAimedAt(area.mouseX, area.mouseY))
    readonly property bool held: area.pressed

    /// Places are in the parent's pixels.
    signal grabbed(real x, real y)
    signal dragged(real x, real y)
    signal dropped

    width: Theme.finger
    height: Theme.finger
    activeFocusOnTab: true

    function isAimedAt(x: real, y: real): bool {
        return Math.hypot(x - root.width / 2, y - root.height / 2) <= root.aim
    }
    function farFrom(x: real, y: real): real {
        return Math.hypot(x - root.x - root.width / 2, y - root.y - root.height / 2)
    }
    function isNearest(x: real, y: real): bool {
        const mine = root.farFrom(x, y)
        for (let i = 0; i < root.parent.children.length; ++i) {
            const other = root.parent.children[i] as Grip
            if (other && other !== root && other.visible && other.enabled && other.farFrom(x, y) < mine)
                return false
        }
        return true
    }

    MouseArea {
        id: area
        anchors.fill: parent
        hoverEnabled: true
        preventStealing: true
        cursorShape: pressed ? Qt.ClosedHandCursor : root.hot ? Qt.OpenHandCursor : Qt.ArrowCursor
        onPressed: (event) => {
            const at = mapToItem(root.parent, event.x, event.y)
            const byFinger = event.source !== Qt.MouseEventNotSynthesized
            if (!(byFinger || root.isAimedAt(event.x, event.y)) || !root.isNearest(at.x, at.y)) {
                event.accepted = false
                return
            }
            root.forceActiveFocus(Qt.MouseFocusReason)
            root.grabbed(at.x, at.y)
        }
        onPositionChanged: (event) => {
            if (!pressed)
                return
            const at = mapToItem(root.parent, event.x, event.y)
            root.dragged(at.x, at.y)
        }
        onReleased: root.dropped()
        onCanceled: root.dropped()
    }
}
