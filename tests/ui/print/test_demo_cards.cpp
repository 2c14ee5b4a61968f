#include "core/exchange/catalogue_json.h"
#include "core/exchange/screen_json.h"
#include "core/exchange/studio_json.h"
#include "core/store/client_reader.h"
#include "tests/support/small_studio.h"
#include "tests/ui/print/sheet_checks.h"
#include "ui/floor/floor_presenter.h"

#include <QDir>
#include <QFile>

#include <gtest/gtest.h>

namespace chalk::ui::print {

namespace {

/// The demo studio's own files.
exchange::StudioFiles demoFiles()
{
    const QDir folder(QStringLiteral(CHALKRUNG_SOURCE "/demo_clients"));
    QStringList names{QStringLiteral("studio.json")};
    for (const QString& name : QDir(folder.filePath(QStringLiteral("clients"))).entryList({QStringLiteral("*.json")}, QDir::Files)) {
        names.append(QStringLiteral("clients/") + name);
    }
    exchange::StudioFiles files;
    for (const QString& name : names) {
        QFile file(folder.filePath(name));
        if (file.open(QIODevice::ReadOnly)) {
            files[name] = file.readAll();
        }
    }
    return files;
}

}  // namespace

TEST(DemoCards, NoTextOfAnyClientsCardOverflowsOnAnyPaper)
{
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    const auto document = exchange::readStudio(demoFiles(), catalogue);
    ASSERT_TRUE(document) << document.error().message().toStdString();
    test::StudioOnTest studio(*document);
    const auto screens = exchange::builtInScreenCatalogue(catalogue);
    floor::FloorPresenter presenter(studio.database(), catalogue, screens, test::someMoment);
    const auto names = store::ClientReader(studio.database()).names();
    ASSERT_TRUE(names);
    EXPECT_EQ(names->size(), document->clients.size());
    for (const auto& [id, name] : *names) {
        const auto client = presenter.forCard(id, document->today, 540);
        ASSERT_TRUE(client) << name;
        sessions::CardContent card = presenter.cardOf(*client);
        test::expectSound(card, name);
        // The longest that can be said of each: reserves that differ, pauses asked for, lighter weeks, a session far on.
        card.sessionNumber = 1234;
        int reserve = 1;
        for (sessions::CardLift& lift : card.lifts) {
            lift.reserve = ++reserve;
            lift.isPauseAsked = lift.kind == progression::PrescriptionKind::Work;
            lift.lighterUntil = lift.isPauseAsked && reserve % 2 == 0 ? std::optional(document->today) : std::nullopt;
        }
        test::expectSound(card, name + ", with mixed reserves");
    }
}

}  // namespace chalk::ui::print
