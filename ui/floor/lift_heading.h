#pragma once

#include "core/progression/stage.h"

#include <QStringList>
#include <QWidget>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::floor {

/// What stands above the entry: the lift, its stage, and the client's cautions, which are never cut.
class LiftHeading : public QWidget {
    Q_OBJECT

public:
    explicit LiftHeading(const common::Look& look, QWidget* parent = nullptr);

    struct View {
        QString name;
        progression::Stage stage = progression::Stage::Pattern;
        int cycle = 1;
        QStringList cautions;  ///< `Back: no loaded rounding`
        QString plan = {};     ///< `Plan week 5 of 12` in place of stage and cycle; empty where none leads

        bool operator==(const View&) const = default;
    };
    void setView(const View& view);

    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    /// The boxes of the cautions; those that fit beside the name stand there.
    [[nodiscard]] std::vector<QRectF> cautionBoxes(double width) const;
    [[nodiscard]] double titleWidth() const;

    const common::Look& m_look;
    View m_view;
};

}  // namespace chalk::ui::floor
