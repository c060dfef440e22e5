document.title = "Bellhousing";
