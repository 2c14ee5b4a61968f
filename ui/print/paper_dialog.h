#pragma once

#include "ui/print/card_dialog.h"
#include "ui/print/paper.h"
#include "ui/print/sheet.h"

#include <QDate>
#include <QDialog>

#include <functional>
#include <vector>

class QLabel;

namespace chalk::ui::common {
class Banner;
}

namespace chalk::ui::print {

class SheetPreview;

/// Makes the pages of a paper for A4 or Letter.
using SheetsFor = std::function<std::vector<Sheet>(PaperSize paper)>;

/// A paper as it will be printed, page by page: it goes to a printer or into a PDF. What went wrong is said in it, with the place.
class PaperDialog : public QDialog {
    Q_OBJECT

public:
    /// `name` is what a PDF is suggested to be called, without its ending.
    PaperDialog(const CardDialogServices& services, const QString& title, const QString& name, SheetsFor sheets, const QDate& day, QWidget* parent = nullptr);

    void setPaper(PaperSize paper);
    void showPage(int page);
    [[nodiscard]] int page() const { return m_page; }
    [[nodiscard]] int pageCount() const { return static_cast<int>(m_sheets.size()); }

    void print();
    void save();
    /// What is said now; nothing where the banner is away.
    [[nodiscard]] QString saying() const;

Q_SIGNALS:
    /// It went to a printer or into a file.
    void paperMade();

private:
    void build();
    void say(common::Signal signal, const QString& icon, const QString& lead, const QString& text);

    CardDialogServices m_services;
    QString m_title;
    QString m_name;
    SheetsFor m_make;
    QDate m_day;
    PaperSize m_paper = PaperSize::A4;
    std::vector<Sheet> m_sheets;
    int m_page = 0;
    common::ActionButton* m_before = nullptr;
    common::ActionButton* m_next = nullptr;
    SheetPreview* m_preview = nullptr;
    QLabel* m_where = nullptr;
    common::SegmentedChoice* m_papers = nullptr;
    common::Banner* m_banner = nullptr;
};

}  // namespace chalk::ui::print
