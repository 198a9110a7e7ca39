package org.cellfile.render.template;

import freemarker.template.SimpleObjectWrapper;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.Version;

/** Lets templates see strings, numbers, lists and maps, an enum as its name, and a record as its components. */
final class PlainDataWrapper extends SimpleObjectWrapper {

    PlainDataWrapper(Version version) {
        super(version);
    }

    @Override
    protected TemplateModel handleUnknownType(Object value) throws TemplateModelException {
        if (value instanceof Record record) {
            return new RecordModel(record, this);
        }
        if (value instanceof Enum<?> constant) {
            return new SimpleScalar(constant.name());
        }
        return super.handleUnknownType(value);
    }
}
