package leadlamp.audit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlaceFormTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "NUMBER                              | 1 top thrust                  | 1",
        "NUMBER SIDE                         | 1 intake front                | 1 intake",
        "NUMBER SIDE, or NUMBER SIDE END where the sheet gives two of a side | 1 intake front | 1 intake front",
        "main NUMBER                         | main 2 front at 90            | main 2",
        "main NUMBER, big end NUMBER         | big end 3 upper               | big end 3",
        "NUMBER RING                         | 2 first                       | 2 first",
        "SIDE NUMBER; NUMBER where the engine has one camshaft | intake 2    | intake 2",
        "NAME, or NAME PLACE where the sheet line has each | head to block 7 | head to block",
        "NAME, or NAME PLACE where the sheet line has each | head to block intake side | head to block",
        "NAME, or NAME PLACE where the sheet line has each | cam gear to camshaft intake | cam gear to camshaft intake",
        "NAME                                | main gallery front            | main gallery front",
        "NUMBER                              | engine                        | engine",
    })
    void a_longer_place_is_cut_to_the_form_of_its_group(String form, String place, String cut) {
        assertThat(new PlaceForm(form).cut(place)).isEqualTo(cut);
    }
}
