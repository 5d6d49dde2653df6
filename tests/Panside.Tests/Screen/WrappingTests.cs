using Panside.Screen.Painting;

namespace Panside.Tests.Screen;

public sealed class WrappingTests
{
    [Fact]
    public void Rows_break_between_words_and_later_rows_stand_in() =>
        Assert.Equal(["> Read the head", "  tank."], Wrapping.Rows("> Read the head tank.", 16));

    [Fact]
    public void A_word_longer_than_a_row_is_broken() =>
        Assert.Equal(["abcd", "efgh", "ij"], Wrapping.Rows("abcdefghij", 4));

    [Fact]
    public void Wide_characters_count_two_columns_and_none_is_lost_where_there_is_room() =>
        Assert.Equal("糖蜜糖蜜糖蜜", string.Concat(Wrapping.Rows("糖蜜糖蜜糖蜜", 5)));

    [Fact]
    public void No_width_at_all_gives_no_rows() => Assert.Empty(Wrapping.Rows("tank", 0));

    [Fact]
    public void Characters_that_would_move_the_cursor_become_spaces() => Assert.Equal("a [2Jb c", Columns.Clean("a\e[2Jb\tc"));
}
