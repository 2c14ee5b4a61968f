#include "ui/trends/trends_presenter.h"

#include "tests/ui/trends/made_up_trends.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::trends {

class TrendsPresenterTest : public ::testing::Test {
protected:
    TrendsPresenterTest()
    {
        auto source = std::make_unique<MadeUpTrends>();
        m_source = source.get();
        m_presenter = std::make_unique<TrendsPresenter>(std::move(source));
    }

    MadeUpTrends* m_source;
    std::unique_ptr<TrendsPresenter> m_presenter;
};

TEST_F(TrendsPresenterTest, ReadsBesideTheWindow)
{
    QSignalSpy loaded(m_presenter.get(), &TrendsPresenter::loaded);
    EXPECT_EQ(m_presenter->view(), nullptr);
    m_presenter->ask({base::ClientId(1), madeUpDay(), 4});
    EXPECT_TRUE(m_presenter->isReading()) << "at once, whether or not a thread has begun";
    EXPECT_EQ(loaded.count(), 0);
    ASSERT_TRUE(QTest::qWaitFor([&loaded] { return loaded.count() == 1; }));
    EXPECT_FALSE(m_presenter->isReading());
    EXPECT_EQ(m_presenter->view()->client()->name, "Joaquin Ferro");
}

TEST_F(TrendsPresenterTest, OfManyAskedMeanwhileTheLastCounts)
{
    QSignalSpy loaded(m_presenter.get(), &TrendsPresenter::loaded);
    m_presenter->ask({base::ClientId(1), madeUpDay(), 4});
    m_presenter->ask({base::ClientId(1), madeUpDay(), 12});
    m_presenter->ask({base::ClientId(2), madeUpDay(), 26});
    ASSERT_TRUE(QTest::qWaitFor([&loaded] { return loaded.count() == 1; }));
    QTest::qWait(20);
    EXPECT_EQ(loaded.count(), 1);
    EXPECT_EQ(m_source->readings, 2);
    EXPECT_EQ(m_source->lastWeeks, 26);
    EXPECT_EQ(m_presenter->view()->client()->name, "Dmitri Oake");
}

TEST_F(TrendsPresenterTest, AFailureLeavesTheLastView)
{
    QSignalSpy loaded(m_presenter.get(), &TrendsPresenter::loaded);
    QSignalSpy failed(m_presenter.get(), &TrendsPresenter::failed);
    m_presenter->ask({{}, madeUpDay(), 4});
    ASSERT_TRUE(QTest::qWaitFor([&loaded] { return loaded.count() == 1; }));
    m_source->isBroken = true;
    m_presenter->ask({base::ClientId(1), madeUpDay(), 4});
    ASSERT_TRUE(QTest::qWaitFor([&failed] { return failed.count() == 1; }));
    EXPECT_EQ(failed.first().first().toString(), QStringLiteral("the disk is gone"));
    EXPECT_NE(m_presenter->view()->studio(), nullptr);
}

}  // namespace chalk::ui::trends
