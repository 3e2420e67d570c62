// Stands in for packages that the PDF library would load for work we never ask of it (reading HTML and bitmaps).
export default undefined;
