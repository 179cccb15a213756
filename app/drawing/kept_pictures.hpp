#pragma once

#include "app/drawing/layer.hpp"

#include <QImage>
#include <QPainter>

#include <cstddef>
#include <optional>
#include <vector>

namespace app {

/// How each limb was painted last, kept as a picture: painted anew only when it looks otherwise.
/// \tparam Look  with ==: all that the picture depends on
template <typename Look>
class KeptPictures {
public:
    /// \param limb    index, of the tree's limbs
    /// \param bounds  of all that `paint` covers
    /// \param paint   of a QPainter&, with whatever pen, brush and hints it likes
    template <typename Paint>
    void draw(QPainter& painter, std::size_t limb, const Look& look, const QRectF& bounds,
              Paint paint)
    {
        if (!takesLayers(painter))
            return paint(painter);
        if (limb >= kept_.size())
            kept_.resize(limb + 1);
        auto& kept = kept_[limb];
        const double scale = pixelScale(painter);
        if (!kept || kept->scale != scale || kept->bounds != bounds || kept->look != look)
            kept.emplace(Kept{look, bounds, scale, layer(bounds, scale, paint)});
        drawLayer(painter, kept->layer);
    }

private:
    struct Kept {
        Look look;
        QRectF bounds;
        double scale{};
        Layer layer;
    };
    std::vector<std::optional<Kept>> kept_;
};

} // namespace app
