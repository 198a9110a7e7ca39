package org.cellfile.render.template;

import freemarker.template.ObjectWrapper;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A record as a template sees it: its components by name, and as {@code is} the sort of thing it is, the record's name in
 * lower case with hyphens ({@code SignatureLine} is {@code signature-line}).
 */
final class RecordModel implements TemplateHashModel {

    private static final ClassValue<Map<String, Method>> ACCESSORS = new ClassValue<>() {
        @Override
        protected Map<String, Method> computeValue(Class<?> type) {
            Map<String, Method> accessors = new HashMap<>();
            for (RecordComponent component : type.getRecordComponents()) {
                accessors.put(component.getName(), component.getAccessor());
            }
            return accessors;
        }
    };

    private final Record content;
    private final ObjectWrapper wrapper;

    RecordModel(Record content, ObjectWrapper wrapper) {
        this.content = content;
        this.wrapper = wrapper;
    }

    @Override
    public @Nullable TemplateModel get(String key) throws TemplateModelException {
        if (key.equals("is")) {
            return new SimpleScalar(sort(content.getClass()));
        }
        Method accessor = ACCESSORS.get(content.getClass()).get(key);
        if (accessor == null) {
            return null;
        }
        try {
            return wrapper.wrap(accessor.invoke(content));
        } catch (ReflectiveOperationException e) {
            throw new TemplateModelException(e);
        }
    }

    @Override
    public boolean isEmpty() {
        return false;
    }

    static String sort(Class<?> type) {
        return type.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }
}
