//! Core's serializable types as plain objects of the page. A general serializer for this border
//! costs more bytes than all of core's geometry, so this one knows just the shapes that core has:
//! structures, lists, numbers, texts, unit variants, options.

use serde::ser::{Error, Impossible, Serialize, SerializeSeq, SerializeStruct, SerializeTuple};
use serde::{Serializer, ser};
use wasm_bindgen::prelude::{JsValue, wasm_bindgen};

#[wasm_bindgen(module = "/src/object.js")]
extern "C" {
    fn begin(list: bool);
    fn end();
    fn key(name: &str);
    #[wasm_bindgen(js_name = put)]
    fn number(value: f64);
    #[wasm_bindgen(js_name = put)]
    fn text(value: &str);
    #[wasm_bindgen(js_name = put)]
    fn flag(value: bool);
    #[wasm_bindgen(js_name = put)]
    fn nothing(value: JsValue);
    fn take() -> JsValue;
}

/// The value as a plain object; `None` for a shape that core has none of.
pub fn to_js<T: Serialize>(value: &T) -> Option<JsValue> {
    let written = value.serialize(Object);
    let object = take();
    written.ok().map(|()| object)
}

/// An error with its place, as a plain object.
pub fn error(line: &str, field: &str, problem: &str, [low, high]: [i32; 2]) -> JsValue {
    begin(false);
    for (name, value) in [("line", line), ("field", field), ("problem", problem)] {
        key(name);
        text(value);
    }
    for (name, value) in [("low", low), ("high", high)] {
        key(name);
        number(f64::from(value));
    }
    end();
    take()
}

#[derive(Clone, Copy)]
struct Object;

/// A shape that core has none of.
#[derive(Debug)]
struct NoSuchShape;

impl core::fmt::Display for NoSuchShape {
    fn fmt(&self, _: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        Ok(())
    }
}

impl ser::StdError for NoSuchShape {}

impl Error for NoSuchShape {
    fn custom<T: core::fmt::Display>(_: T) -> Self {
        Self
    }
}

type Done = Result<(), NoSuchShape>;
type Never = Impossible<(), NoSuchShape>;

macro_rules! numbers {
    ($($method:ident: $t:ty),*) => {
        $(fn $method(self, v: $t) -> Done {
            number(v as f64);
            Ok(())
        })*
    };
}

impl Serializer for Object {
    type Ok = ();
    type Error = NoSuchShape;
    type SerializeSeq = Self;
    type SerializeTuple = Self;
    type SerializeTupleStruct = Never;
    type SerializeTupleVariant = Never;
    type SerializeMap = Never;
    type SerializeStruct = Self;
    type SerializeStructVariant = Never;

    numbers!(serialize_i8: i8, serialize_i16: i16, serialize_i32: i32, serialize_i64: i64,
        serialize_u8: u8, serialize_u16: u16, serialize_u32: u32, serialize_u64: u64,
        serialize_f32: f32, serialize_f64: f64);

    fn serialize_bool(self, v: bool) -> Done {
        flag(v);
        Ok(())
    }

    fn serialize_str(self, v: &str) -> Done {
        text(v);
        Ok(())
    }

    fn serialize_none(self) -> Done {
        nothing(JsValue::NULL);
        Ok(())
    }

    fn serialize_some<T: Serialize + ?Sized>(self, value: &T) -> Done {
        value.serialize(self)
    }

    fn serialize_unit_variant(self, _: &'static str, _: u32, name: &'static str) -> Done {
        text(name);
        Ok(())
    }

    fn serialize_seq(self, _: Option<usize>) -> Result<Self, NoSuchShape> {
        begin(true);
        Ok(self)
    }

    fn serialize_tuple(self, _: usize) -> Result<Self, NoSuchShape> {
        begin(true);
        Ok(self)
    }

    fn serialize_struct(self, _: &'static str, _: usize) -> Result<Self, NoSuchShape> {
        begin(false);
        Ok(self)
    }

    fn serialize_char(self, _: char) -> Done {
        Err(NoSuchShape)
    }

    fn serialize_bytes(self, _: &[u8]) -> Done {
        Err(NoSuchShape)
    }

    fn serialize_unit(self) -> Done {
        Err(NoSuchShape)
    }

    fn serialize_unit_struct(self, _: &'static str) -> Done {
        Err(NoSuchShape)
    }

    fn serialize_newtype_struct<T: Serialize + ?Sized>(self, _: &'static str, _: &T) -> Done {
        Err(NoSuchShape)
    }

    fn serialize_newtype_variant<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        _: u32,
        _: &'static str,
        _: &T,
    ) -> Done {
        Err(NoSuchShape)
    }

    fn serialize_tuple_struct(self, _: &'static str, _: usize) -> Result<Never, NoSuchShape> {
        Err(NoSuchShape)
    }

    fn serialize_tuple_variant(
        self,
        _: &'static str,
        _: u32,
        _: &'static str,
        _: usize,
    ) -> Result<Never, NoSuchShape> {
        Err(NoSuchShape)
    }

    fn serialize_map(self, _: Option<usize>) -> Result<Never, NoSuchShape> {
        Err(NoSuchShape)
    }

    fn serialize_struct_variant(
        self,
        _: &'static str,
        _: u32,
        _: &'static str,
        _: usize,
    ) -> Result<Never, NoSuchShape> {
        Err(NoSuchShape)
    }

    fn collect_str<T: core::fmt::Display + ?Sized>(self, _: &T) -> Done {
        Err(NoSuchShape)
    }
}

impl SerializeSeq for Object {
    type Ok = ();
    type Error = NoSuchShape;

    fn serialize_element<T: Serialize + ?Sized>(&mut self, value: &T) -> Done {
        value.serialize(*self)
    }

    fn end(self) -> Done {
        end();
        Ok(())
    }
}

impl SerializeTuple for Object {
    type Ok = ();
    type Error = NoSuchShape;

    fn serialize_element<T: Serialize + ?Sized>(&mut self, value: &T) -> Done {
        value.serialize(*self)
    }

    fn end(self) -> Done {
        end();
        Ok(())
    }
}

impl SerializeStruct for Object {
    type Ok = ();
    type Error = NoSuchShape;

    fn serialize_field<T: Serialize + ?Sized>(&mut self, name: &'static str, value: &T) -> Done {
        key(name);
        value.serialize(*self)
    }

    fn end(self) -> Done {
        end();
        Ok(())
    }
}
