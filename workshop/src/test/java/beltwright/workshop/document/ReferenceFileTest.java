package beltwright.workshop.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import beltwright.part.Material;
import beltwright.quantity.Refusal;
import org.junit.jupiter.api.Test;

class ReferenceFileTest {
    @Test
    void comesWithMaterialsThatSayWhereTheirValuesWereRead() {
        var reference = ReferenceFile.bundled();
        // Aluminum Association typical value as read in public copies
        assertThat(reference.material("aluminium-6061-t6").shearMpa()).isEqualTo(207);
        assertThat(reference.material("core-plastic").shearMpa()).isNaN();
        assertThat(reference.material("urethane").hatch()).isEqualTo(Material.Hatch.RUBBER);
        assertThat(reference.materials().values())
                .extracting(m -> m.of(Material.Property.SHEAR).source())
                .noneMatch(String::isBlank);
        assertThat(reference.sha256()).hasSize(64);
    }

    @Test
    void aMaterialWithoutASourceIsRefused() {
        assertThatThrownBy(() -> ReferenceFile.read("own.yaml", """
                        schema: 1
                        reference: materials
                        materials:
                          tin: {name: Tin, shearMpa: {value: 12}, hatch: steel}
                        """))
                .isInstanceOf(Refusal.class)
                .hasMessageStartingWith("own.yaml.materials.tin.shearMpa.source: missing");
    }
}
