#pragma once

#include "ui/shell/page.h"
#include "ui/trends/trends_presenter.h"

#include <memory>

class QComboBox;
class QStackedLayout;

namespace chalk::ui::common {
class ActionButton;
class Banner;
class Clock;
class Dialogs;
class LoadingRows;
class Look;
class PageHeader;
class SegmentedChoice;
}

namespace chalk::ui::trends {

class TrendCards;
class TrendTables;

/// What the page works with; everything outlives it.
struct TrendsServices {
    const common::Look& look;
    const common::Clock& clock;
    common::Dialogs& dialogs;
};

/// How a client or everybody went over 4, 12 or 26 weeks: charts, and the same numbers as tables.
class TrendsPage : public shell::Page {
    Q_OBJECT

public:
    TrendsPage(const TrendsServices& services, std::unique_ptr<TrendsSource> source, QWidget* parent = nullptr);

    [[nodiscard]] QString title() const override;
    /// Shows the client of the place; without one, who was shown last.
    void open(const shell::Place& place) override;
    [[nodiscard]] shell::Place place() const override;
    void refresh() override;
    [[nodiscard]] std::vector<shell::KeyHint> keyHints() const override;
    [[nodiscard]] std::optional<shell::OpenClient> openClient() const override;
    [[nodiscard]] bool canPrint() const override;
    /// Asks for the client's progress report.
    void print() override;
    /// Closes what was said, or leaves the table.
    bool closeOrClear() override;
    void setRoom(bool isNarrow, bool isLow) override;

Q_SIGNALS:
    void reportAsked(base::ClientId client);

private:
    void buildHeader();
    void buildBody();
    void addActions();
    QAction* addKey(const QString& text, const QKeySequence& key, void (TrendsPage::*run)());
    void connectParts();
    void showReading();
    void showView();
    /// The days of the last view, beside the title.
    void showRange();
    void fillClients();
    void setWeeks(int choice);
    void chooseClient(int index);
    void goBack();
    void goOn();
    void toggleTable();
    void focusContent();
    void copyNumbers();
    void openBoard();
    void offerExports();
    void saveNumbers();
    void saveChart(std::size_t chart, bool isSvg);
    void saveAs(const QString& name, const QString& filter, const QString& suffix, const QByteArray& content);
    void sayNews(const QString& lead, const QString& text, bool isTrouble);
    /// `joaquin-ferro-load-volume-2026-W48`.
    [[nodiscard]] QString fileNameFor(const QString& what) const;

    TrendsServices m_services;
    TrendsPresenter m_presenter;
    TrendsAsk m_ask;
    common::PageHeader* m_header = nullptr;
    QComboBox* m_who = nullptr;
    common::SegmentedChoice* m_span = nullptr;
    common::ActionButton* m_export = nullptr;
    common::ActionButton* m_report = nullptr;  ///< of a client
    common::Banner* m_learning = nullptr;
    common::Banner* m_news = nullptr;
    QStackedLayout* m_stack = nullptr;
    common::LoadingRows* m_loading = nullptr;
    TrendCards* m_cards = nullptr;
    TrendTables* m_tables = nullptr;
    std::vector<QAction*> m_keys;  ///< that work on the charts and the tables
};

}  // namespace chalk::ui::trends
