package org.cellfile.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.apache.commons.statistics.distribution.TDistribution;
import org.cellfile.quantity.Quantity;
import org.cellfile.trace.Count;
import org.cellfile.trace.Lookup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Our table of Student's t against org.apache.commons:commons-statistics-distribution. */
class StudentsTTest {

    private static Lookup of(int degrees) {
        return StudentsT.of(degrees, new Count(Quantity.count(degrees)));
    }

    private static BigDecimal reference(int degrees) {
        return new BigDecimal(TDistribution.of(degrees).inverseCumulativeProbability(0.975));
    }

    @Test
    void everyRowAgreesToTheLastDigit() {
        for (int degrees = 1; degrees <= 30; degrees++) {
            assertThat(of(degrees).cell().number())
                    .as("%s degrees of freedom", degrees)
                    .isEqualTo(reference(degrees).setScale(3, RoundingMode.HALF_UP));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {31, 32, 60, 1000})
    void whereThereIsNoRowTheBandIsNoNarrower(int degrees) {
        assertThat(of(degrees).cell()).isEqualTo(of(30).cell());
        assertThat(of(degrees).cell().number()).isGreaterThan(reference(degrees));
        assertThat(of(degrees).taken()).isEqualTo("t_95 stands in the row of 30 degrees of freedom, for " + degrees);
    }
}
