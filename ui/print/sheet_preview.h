#pragma once

#include "ui/print/sheet.h"

#include <QWidget>

namespace chalk::ui::print {

/// Shows a sheet on white paper just as it will be printed, as large as the widget allows.
class SheetPreview : public QWidget {
    Q_OBJECT

public:
    explicit SheetPreview(QWidget* parent = nullptr);

    void setSheet(const Sheet& sheet);

    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Sheet m_sheet;
};

}  // namespace chalk::ui::print
