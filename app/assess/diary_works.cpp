#include "app/assess/diary_works.hpp"

#include "model/diary/garden_diary.hpp"

namespace app {

DiaryWork modelDiaryWork(const model::Tables& tables)
{
    return [&tables](const GardenSnapshot& garden, std::chrono::year_month_day date,
                     const std::atomic<bool>& cancel) {
        return model::diary::gardenDiary(*garden, tables, date, {}, &cancel);
    };
}

} // namespace app
