#pragma once

#include "ui/common/tags.h"

#include <QWidget>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::check_in {

/// The stage of a lift as a tag; as large as it has to be.
class StageTag : public QWidget {
    Q_OBJECT

public:
    /// `look` outlives the tag.
    explicit StageTag(const common::Look& look, QWidget* parent = nullptr);

    void setView(const common::StageTagView& view);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const common::Look& m_look;
    common::StageTagView m_view;
};

}  // namespace chalk::ui::check_in
