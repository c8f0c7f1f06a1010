PRAGMA application_id = 1112305511;
BEGIN TRANSACTION;
CREATE TABLE "Components" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Components" PRIMARY KEY AUTOINCREMENT,
    "Name" TEXT NOT NULL,
    "SerialNumber" TEXT NOT NULL,
    "Donor" TEXT NOT NULL,
    "Shelf" TEXT NOT NULL,
    "Notes" TEXT NOT NULL,
    "Kind" TEXT NOT NULL,
    "Ring" INTEGER NULL,
    "Pinion" INTEGER NULL,
    "HubReductionSi" REAL NULL,
    "HubReductionSource" TEXT NULL,
    "HubReductionText" TEXT NULL,
    "HubReductionUnit" TEXT NULL,
    "StatedRatioSi" REAL NULL,
    "StatedRatioSource" TEXT NULL,
    "StatedRatioText" TEXT NULL,
    "StatedRatioUnit" TEXT NULL,
    "IdleSi" REAL NULL,
    "IdleSource" TEXT NULL,
    "IdleText" TEXT NULL,
    "IdleUnit" TEXT NULL,
    "RedlineSi" REAL NULL,
    "RedlineSource" TEXT NULL,
    "RedlineText" TEXT NULL,
    "RedlineUnit" TEXT NULL,
    "OverdriveRatioSi" REAL NULL,
    "OverdriveRatioSource" TEXT NULL,
    "OverdriveRatioText" TEXT NULL,
    "OverdriveRatioUnit" TEXT NULL,
    "HighSi" REAL NULL,
    "HighSource" TEXT NULL,
    "HighText" TEXT NULL,
    "HighUnit" TEXT NULL,
    "LowSi" REAL NULL,
    "LowSource" TEXT NULL,
    "LowText" TEXT NULL,
    "LowUnit" TEXT NULL,
    "SizeText" TEXT NULL,
    "Construction" TEXT NULL,
    "StatedCircumferenceSi" REAL NULL,
    "StatedCircumferenceSource" TEXT NULL,
    "StatedCircumferenceText" TEXT NULL,
    "StatedCircumferenceUnit" TEXT NULL,
    "WornSi" REAL NULL,
    "WornSource" TEXT NULL,
    "WornText" TEXT NULL,
    "WornUnit" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Components_Construction" CHECK ("Construction" IN ('Radial', 'Bias')),
    CONSTRAINT "CK_Components_High" CHECK (("HighSi" IS NULL) + ("HighUnit" IS NULL) + ("HighText" IS NULL) + ("HighSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_HighSi" CHECK ("HighSi" BETWEEN 0.5 AND 6.0),
    CONSTRAINT "CK_Components_HighSource" CHECK ("HighSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_HubReduction" CHECK (("HubReductionSi" IS NULL) + ("HubReductionUnit" IS NULL) + ("HubReductionText" IS NULL) + ("HubReductionSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_HubReductionSi" CHECK ("HubReductionSi" BETWEEN 1.0 AND 6.0),
    CONSTRAINT "CK_Components_HubReductionSource" CHECK ("HubReductionSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_Idle" CHECK (("IdleSi" IS NULL) + ("IdleUnit" IS NULL) + ("IdleText" IS NULL) + ("IdleSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_IdleSi" CHECK ("IdleSi" BETWEEN 0.0 AND 1000.0),
    CONSTRAINT "CK_Components_IdleSource" CHECK ("IdleSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_Kind" CHECK ("Kind" IN ('engine', 'transmission', 'overdrive', 'transfer case', 'axle', 'wheels')),
    CONSTRAINT "CK_Components_Low" CHECK (("LowSi" IS NULL) + ("LowUnit" IS NULL) + ("LowText" IS NULL) + ("LowSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_LowSi" CHECK ("LowSi" BETWEEN 0.5 AND 6.0),
    CONSTRAINT "CK_Components_LowSource" CHECK ("LowSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_Name" CHECK (length(trim("Name")) > 0),
    CONSTRAINT "CK_Components_OverdriveRatio" CHECK (("OverdriveRatioSi" IS NULL) + ("OverdriveRatioUnit" IS NULL) + ("OverdriveRatioText" IS NULL) + ("OverdriveRatioSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_OverdriveRatioSi" CHECK ("OverdriveRatioSi" BETWEEN 0.4 AND 1.0),
    CONSTRAINT "CK_Components_OverdriveRatioSource" CHECK ("OverdriveRatioSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_Pinion" CHECK ("Pinion" BETWEEN 4 AND 200),
    CONSTRAINT "CK_Components_Redline" CHECK (("RedlineSi" IS NULL) + ("RedlineUnit" IS NULL) + ("RedlineText" IS NULL) + ("RedlineSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_RedlineSi" CHECK ("RedlineSi" BETWEEN 0.0 AND 1000.0),
    CONSTRAINT "CK_Components_RedlineSource" CHECK ("RedlineSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_Ring" CHECK ("Ring" BETWEEN 4 AND 200),
    CONSTRAINT "CK_Components_StatedCircumference" CHECK (("StatedCircumferenceSi" IS NULL) + ("StatedCircumferenceUnit" IS NULL) + ("StatedCircumferenceText" IS NULL) + ("StatedCircumferenceSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_StatedCircumferenceSi" CHECK ("StatedCircumferenceSi" BETWEEN 0.8 AND 6.0),
    CONSTRAINT "CK_Components_StatedCircumferenceSource" CHECK ("StatedCircumferenceSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_StatedRatio" CHECK (("StatedRatioSi" IS NULL) + ("StatedRatioUnit" IS NULL) + ("StatedRatioText" IS NULL) + ("StatedRatioSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_StatedRatioSi" CHECK ("StatedRatioSi" BETWEEN 1.5 AND 12.0),
    CONSTRAINT "CK_Components_StatedRatioSource" CHECK ("StatedRatioSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "CK_Components_Teeth" CHECK (("Ring" IS NULL) + ("Pinion" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Components_wheels" CHECK ("Kind" <> 'wheels' OR ("SizeText" IS NOT NULL AND "Construction" IS NOT NULL)),
    CONSTRAINT "CK_Components_Worn" CHECK (("WornSi" IS NULL) + ("WornUnit" IS NULL) + ("WornText" IS NULL) + ("WornSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Components_WornSi" CHECK ("WornSi" BETWEEN 0.0 AND 0.03),
    CONSTRAINT "CK_Components_WornSource" CHECK ("WornSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed'))
) STRICT;
INSERT INTO "Components" VALUES(1,'Corvane 3.3 six','CV33-118204','Wexcombe delivery van, Tolland yard','','','engine',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,1.08333333333333339256e+01,'Measured','650 rpm','rev/min',7.66666666666666714053e+01,'MakersData','4600 rpm','rev/min',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-99E2-7336-81BC-C895F92585BA',0);
INSERT INTO "Components" VALUES(2,'Delmere D4 four-speed','D4-60921','came with the engine','','','transmission',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-9B06-7861-B5DB-B0EB83CFCC68',0);
INSERT INTO "Components" VALUES(3,'Harrow axle, the frame''s own','HR-3-0077','came with the frame','under the bench, left','Pinion chipped on two teeth; whines from 70 km/h.','axle',43,13,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-9B88-71A3-84BF-DDE246E52E23',0);
INSERT INTO "Components" VALUES(4,'Harrow yard axle','HR-7-4410','Tolland yard, row 6, no vehicle with it','','Cover and tag look newer than the housing.','axle',NULL,NULL,NULL,NULL,NULL,NULL,3.9,'Tag','3.90','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-9BE3-7EAA-9D49-ECD2E7F802E3',0);
INSERT INTO "Components" VALUES(5,'Stavely 205/75R15 on steel','','came with the frame','','','wheels',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'205/75R15','Radial',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-9BEC-7A2C-BFD8-92F630BF7D70',0);
INSERT INTO "Components" VALUES(6,'Stavely 235/75R15 on steel','','bought new','','','wheels',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'235/75R15 105S','Radial',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-9C88-736F-979C-5E5CB378D3E0',0);
INSERT INTO "Components" VALUES(7,'Corvane 2.1 four','CV21-7715','its own','','','engine',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,12.5,'Measured','750 rpm','rev/min',8.66666666666666714053e+01,'OwnersWord','5200 rpm','rev/min',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A362-7339-A3D4-044DDC446237',0);
INSERT INTO "Components" VALUES(8,'Delmere D4 light','D4L-1123','its own','','','transmission',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A36D-70A5-8C0C-8E91EA40512A',0);
INSERT INTO "Components" VALUES(9,'Delmere step-up unit','SU-338','swap meet at Ferrow','','','overdrive',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0.78,'MakersData','0.78','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A37B-708B-96A1-2D55D3B83169',0);
INSERT INTO "Components" VALUES(10,'Harrow light axle, short','HR-L-209','its own','rack B, bottom','','axle',NULL,NULL,NULL,NULL,NULL,NULL,4.3,'OwnersWord','4.3','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A39C-78D6-B0B4-6DE3D73E6678',0);
INSERT INTO "Components" VALUES(11,'Harrow light axle, long','HR-L-311','saloon wreck at Ferrow','','','axle',NULL,NULL,NULL,NULL,NULL,NULL,3.9,'Tag','3.90','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A3A8-7B80-B54C-64DA1BC54B2B',0);
INSERT INTO "Components" VALUES(12,'Tarn 165/80-15 on wires','','bought new','','','wheels',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'165/80-15','Bias',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A3AE-7BE1-9C95-15AB05A194A9',0);
INSERT INTO "Components" VALUES(13,'Corvane 2.3 four','CV23-90411','its own','','','engine',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,1.33333333333333339256e+01,'MakersData','800 rpm','rev/min',9.66666666666666714053e+01,'MakersData','5800 rpm','rev/min',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A454-728E-9D62-C7CA22859061',0);
INSERT INTO "Components" VALUES(14,'Delmere D4, Tansy''s own','D4-33870','its own','rack A, top','Jumps out of second.','transmission',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A45B-7614-AC5D-175C152360DD',0);
INSERT INTO "Components" VALUES(15,'Delmere D5 five-speed','D5-00214','Tolland yard, from a late saloon','','','transmission',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A465-7FFE-88E6-8358ADE92F4E',0);
INSERT INTO "Components" VALUES(16,'Harrow axle 41/11','HR-5-2218','its own','','','axle',41,11,NULL,NULL,NULL,NULL,3.73,'Tag','3.73','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A46F-7A47-86AE-1220630BCE6D',0);
INSERT INTO "Components" VALUES(17,'Norwell 195/65R15 on alloys','','bought new','','','wheels',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'195/65R15 91H','Radial',NULL,NULL,NULL,NULL,0.002,'Measured','2 mm','mm','01A21435-A47A-7C0B-A486-D5B348E7440F',0);
INSERT INTO "Components" VALUES(18,'Corvane 2.7 six','CV27-40032','Tolland yard','','','engine',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,1.16666666666666660743e+01,'OwnersWord','700 rpm','rev/min',100.0,'MakersData','6000 rpm','rev/min',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A566-7E55-9694-8B348A504997',0);
INSERT INTO "Components" VALUES(19,'Delmere D4 close-ratio','D4C-511','Bastian''s shelf','','','transmission',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A572-7BF1-82CF-0F3C0D673C9F',0);
INSERT INTO "Components" VALUES(20,'Harrow narrow axle','HR-N-0815','unknown, bought with the shell','','','axle',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A582-7991-94CF-05CDBD58C153',0);
INSERT INTO "Components" VALUES(21,'Norwell 185/70R14 on steel','','bought new','','','wheels',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'185/70R14 88T','Radial',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A58F-792B-BDD2-D0929AB8E0BA',0);
INSERT INTO "Components" VALUES(22,'Corvane 3.9 diesel','CVD39-2260','ground-power set, Ferrow','','','engine',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,10.0,'Measured','600 rpm','rev/min',60.0,'MakersData','3600 rpm','rev/min',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A64A-733C-AF3B-D6FBBCD56168',0);
INSERT INTO "Components" VALUES(23,'Delmere D4 heavy','D4H-902','its own','','','transmission',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A654-78B0-A6B4-201E2A603C15',0);
INSERT INTO "Components" VALUES(24,'Marlow M2 transfer case','M2-4451','its own','','','transfer case',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,1.0,'MakersData','1.00','',2.32,'MakersData','2.32','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A65E-77E3-83EF-A0B14D282425',0);
INSERT INTO "Components" VALUES(25,'Harrow heavy rear 4.56','HR-H-120','its own','rack C','','axle',41,9,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A6B0-75FA-A095-AFE3DE5DF40E',0);
INSERT INTO "Components" VALUES(26,'Harrow heavy front 4.56','HR-HF-121','its own','rack C','','axle',41,9,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A6BB-7F7C-9AC9-BD1D82F3CA18',0);
INSERT INTO "Components" VALUES(27,'Harrow heavy rear 4.10','HR-H-388','Tolland yard, matched pair','','','axle',41,10,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A6C4-7861-A757-BF60B25D2429',0);
INSERT INTO "Components" VALUES(28,'Harrow heavy front 4.10','HR-HF-389','Tolland yard, matched pair','','','axle',NULL,NULL,NULL,NULL,NULL,NULL,4.1,'Tag','4.10','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A6CC-711C-A912-F899DF16CC6F',0);
INSERT INTO "Components" VALUES(29,'Tarn LT235/85R16 on steel','','bought new','','','wheels',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'LT235/85R16 120/116Q','Radial',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A6D4-7B1E-BAC5-B59AF1D4F4D6',0);
INSERT INTO "Components" VALUES(30,'Corvane 2.1 four, van''s own','','its own','','Turns over by hand.','engine',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A7BA-7A15-B6A5-3B2DEC9428BF',0);
INSERT INTO "Components" VALUES(31,'Delmere D4 column-shift','','its own','','','transmission',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A7C3-789E-A2E8-A5AE1148D401',0);
INSERT INTO "Components" VALUES(32,'van''s own axle, no tag','','its own','','','axle',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A7D7-7993-9D76-2812C6F7E3C3',0);
CREATE TABLE "Fitments" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Fitments" PRIMARY KEY AUTOINCREMENT,
    "ComponentId" INTEGER NOT NULL,
    "VehicleId" INTEGER NOT NULL,
    "Position" TEXT NOT NULL,
    "FromDate" TEXT NOT NULL,
    "FromOrder" INTEGER NOT NULL,
    "Reason" TEXT NOT NULL,
    "ToDate" TEXT NULL,
    "ToOrder" INTEGER NULL,
    "ReasonOff" TEXT NOT NULL,
    "FromOdometerMetres" REAL NULL,
    "FromOdometerText" TEXT NULL,
    "FromOdometerUnit" TEXT NULL,
    "ToOdometerMetres" REAL NULL,
    "ToOdometerText" TEXT NULL,
    "ToOdometerUnit" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Fitments_Forward" CHECK (("FromDate", "FromOrder") < ("ToDate", "ToOrder")),
    CONSTRAINT "CK_Fitments_FromDate" CHECK ("FromDate" IS date("FromDate")),
    CONSTRAINT "CK_Fitments_FromOdometer" CHECK (("FromOdometerMetres" IS NULL) + ("FromOdometerUnit" IS NULL) + ("FromOdometerText" IS NULL) IN (0, 3)),
    CONSTRAINT "CK_Fitments_FromOdometerMetres" CHECK ("FromOdometerMetres" BETWEEN 0 AND 10000000000),
    CONSTRAINT "CK_Fitments_Off" CHECK (("ToDate" IS NULL) + ("ToOrder" IS NULL) IN (0, 2)),
    CONSTRAINT "CK_Fitments_Position" CHECK ("Position" IN ('Engine', 'Transmission', 'Overdrive', 'TransferCase', 'RearAxle', 'FrontAxle', 'Tyres')),
    CONSTRAINT "CK_Fitments_ToDate" CHECK ("ToDate" IS date("ToDate")),
    CONSTRAINT "CK_Fitments_ToOdometer" CHECK (("ToOdometerMetres" IS NULL) + ("ToOdometerUnit" IS NULL) + ("ToOdometerText" IS NULL) IN (0, 3)),
    CONSTRAINT "CK_Fitments_ToOdometerMetres" CHECK ("ToOdometerMetres" BETWEEN 0 AND 10000000000),
    CONSTRAINT "FK_Fitments_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Fitments_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO "Fitments" VALUES(1,1,1,'Engine','2024-03-09',1,'the frame came without one',NULL,NULL,'',61204000.0,'61 204 km','km',NULL,NULL,NULL,'01A21435-9FCD-7D3C-8FF0-0044FA5B7B0D',0);
INSERT INTO "Fitments" VALUES(2,2,1,'Transmission','2024-03-09',2,'bolted up with the engine',NULL,NULL,'',61204000.0,'61 204 km','km',NULL,NULL,NULL,'01A21435-A153-7329-8EE2-861E610FDF4A',0);
INSERT INTO "Fitments" VALUES(3,3,1,'RearAxle','2024-03-16',1,'back under the frame after cleaning','2024-10-12',1,'own axle whines, pinion chipped; tag of this one says 3.90',61204000.0,'61 204','km',64105000.0,'64 105','km','01A21435-A16E-73F5-8F09-C6A4C5C5E60F',1);
INSERT INTO "Fitments" VALUES(4,5,1,'Tyres','2024-03-16',2,'to roll the frame about','2024-05-25',1,'taller tyres, to calm the engine on the road',61204000.0,'61 204','km',61690000.0,'61 690','km','01A21435-A1B0-75F7-AEA4-AE00D81E6FA3',1);
INSERT INTO "Fitments" VALUES(5,6,1,'Tyres','2024-05-25',1,'taller tyres, to calm the engine on the road',NULL,NULL,'',61690000.0,'61 690','km',NULL,NULL,NULL,'01A21435-A1F9-7BBD-8DAC-40F3213E8C73',0);
INSERT INTO "Fitments" VALUES(6,4,1,'RearAxle','2024-10-12',1,'own axle whines, pinion chipped; tag of this one says 3.90',NULL,NULL,'',64105000.0,'64 105','km',NULL,NULL,NULL,'01A21435-A2DA-77B6-ADCD-70B4FA653C56',0);
INSERT INTO "Fitments" VALUES(7,7,2,'Engine','2024-03-02',1,'rebuilt',NULL,NULL,'',61816512.384,'38 411','mi',NULL,NULL,NULL,'01A21435-A3BD-7D98-BE23-C0646536D4C2',0);
INSERT INTO "Fitments" VALUES(8,8,2,'Transmission','2024-03-02',2,'rebuilt with the engine',NULL,NULL,'',61816512.384,'38 411','mi',NULL,NULL,NULL,'01A21435-A3D2-73B4-AE8F-6618C2F69379',0);
INSERT INTO "Fitments" VALUES(9,10,2,'RearAxle','2024-03-23',1,'its own, new seals','2024-06-15',1,'too busy at 60; the long one from Ferrow',61816512.384,'38 411','mi',62796602.88,'39 020 mi','mi','01A21435-A3DD-75B3-A8CF-8DE188E1BE9C',1);
INSERT INTO "Fitments" VALUES(10,12,2,'Tyres','2024-04-06',1,'right size for the arches',NULL,NULL,'',61818121.728,'38 412','mi',NULL,NULL,NULL,'01A21435-A3F0-7B20-867B-F309BEE9135C',0);
INSERT INTO "Fitments" VALUES(11,11,2,'RearAxle','2024-06-15',1,'too busy at 60; the long one from Ferrow',NULL,NULL,'',62796602.88,'39 020 mi','mi',NULL,NULL,NULL,'01A21435-A407-71EA-9815-76AE37C85181',0);
INSERT INTO "Fitments" VALUES(12,9,2,'Overdrive','2024-08-10',1,'Rufus wants it quiet at 60',NULL,NULL,'',63639899.136,'39 544','mi',NULL,NULL,NULL,'01A21435-A438-75AC-882E-299A599F4AA2',0);
INSERT INTO "Fitments" VALUES(13,13,3,'Engine','2024-04-13',1,'back in after a head gasket',NULL,NULL,'',148249550.592,'92 118','mi',NULL,NULL,NULL,'01A21435-A4B8-7C3A-BD0B-6E65CAA711EA',0);
INSERT INTO "Fitments" VALUES(14,14,3,'Transmission','2024-04-13',2,'its own, for now','2024-07-27',1,'own box jumps out of second, and 70 mph is tiring',148249550.592,'92 118','mi',152678465.28,'94 870','mi','01A21435-A4D7-7010-A584-978A58242B33',1);
INSERT INTO "Fitments" VALUES(15,16,3,'RearAxle','2024-04-20',1,'cover off, teeth counted, new gasket',NULL,NULL,'',148249550.592,'92 118','mi',NULL,NULL,NULL,'01A21435-A4FC-7A76-BEBD-68091DAA74EA',0);
INSERT INTO "Fitments" VALUES(16,17,3,'Tyres','2024-04-20',2,'legal tread',NULL,NULL,'',148249550.592,'92 118','mi',NULL,NULL,NULL,'01A21435-A513-7AAD-A875-420229A1F2C6',0);
INSERT INTO "Fitments" VALUES(17,15,3,'Transmission','2024-07-27',1,'own box jumps out of second, and 70 mph is tiring',NULL,NULL,'',152678465.28,'94 870','mi',NULL,NULL,NULL,'01A21435-A543-7907-828F-6E17F01D57D3',0);
INSERT INTO "Fitments" VALUES(18,18,4,'Engine','2024-09-14',1,'odometer set to nought with the new dial',NULL,NULL,'',0.0,'0','km',NULL,NULL,NULL,'01A21435-A5A3-7E19-A25E-1FED902A2064',0);
INSERT INTO "Fitments" VALUES(19,19,4,'Transmission','2024-09-14',2,'in with the engine',NULL,NULL,'',0.0,'0','km',NULL,NULL,NULL,'01A21435-A5B9-70D0-9B35-5B6BC2CF4684',0);
INSERT INTO "Fitments" VALUES(20,20,4,'RearAxle','2024-11-02',1,'it came with the shell and bolts straight up',NULL,NULL,'',0.0,'0','km',NULL,NULL,NULL,'01A21435-A5CD-7561-BB93-F822DD5FEC2C',0);
INSERT INTO "Fitments" VALUES(21,21,4,'Tyres','2024-11-09',1,'onto its wheels at last',NULL,NULL,'',0.0,'0','km',NULL,NULL,NULL,'01A21435-A5ED-73D0-92D4-9C8AFE57A467',0);
INSERT INTO "Fitments" VALUES(22,22,5,'Engine','2024-04-27',1,'the petrol engine was worn out',NULL,NULL,'',140220000.0,'140 220','km',NULL,NULL,NULL,'01A21435-A6E0-7344-8243-9923F3BA8131',0);
INSERT INTO "Fitments" VALUES(23,23,5,'Transmission','2024-04-27',2,'new bearings',NULL,NULL,'',140220000.0,'140 220','km',NULL,NULL,NULL,'01A21435-A6ED-73AD-8F61-43AD41CBBD22',0);
INSERT INTO "Fitments" VALUES(24,24,5,'TransferCase','2024-04-27',3,'new seals',NULL,NULL,'',140220000.0,'140 220','km',NULL,NULL,NULL,'01A21435-A703-766F-BB70-58EEB73E2710',0);
INSERT INTO "Fitments" VALUES(25,25,5,'RearAxle','2024-05-11',1,'its own','2024-10-05',1,'the diesel runs out of revs at 90 km/h on the old pair',140220000.0,'140 220','km',143008000.0,'143 008','km','01A21435-A715-7092-9137-1C9F4870B3CA',1);
INSERT INTO "Fitments" VALUES(26,26,5,'FrontAxle','2024-05-11',2,'its own','2024-10-05',2,'has to match the rear',140220000.0,'140 220','km',143008000.0,'143 008','km','01A21435-A728-7F6C-9FE2-5576BB8F401D',1);
INSERT INTO "Fitments" VALUES(27,29,5,'Tyres','2024-05-11',3,'mud pattern, to clear the arches',NULL,NULL,'',140220000.0,'140 220','km',NULL,NULL,NULL,'01A21435-A74C-74B7-B5FF-8D986B6E36BD',0);
INSERT INTO "Fitments" VALUES(28,27,5,'RearAxle','2024-10-05',1,'the diesel runs out of revs at 90 km/h on the old pair',NULL,NULL,'',143008000.0,'143 008','km',NULL,NULL,NULL,'01A21435-A778-776A-96F6-F9483D496BD0',0);
INSERT INTO "Fitments" VALUES(29,28,5,'FrontAxle','2024-10-05',2,'has to match the rear',NULL,NULL,'',143008000.0,'143 008','km',NULL,NULL,NULL,'01A21435-A78E-71BA-86D3-EA717CB1BD62',0);
INSERT INTO "Fitments" VALUES(30,30,6,'Engine','2024-08-31',1,'as found',NULL,NULL,'',NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A913-7087-8980-5D1B1F09D848',0);
INSERT INTO "Fitments" VALUES(31,31,6,'Transmission','2024-08-31',2,'as found',NULL,NULL,'',NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A91C-7BA2-AFAB-DFB3A059D856',0);
INSERT INTO "Fitments" VALUES(32,32,6,'RearAxle','2024-08-31',3,'as found',NULL,NULL,'',NULL,NULL,NULL,NULL,NULL,NULL,'01A21435-A92A-7B32-B10F-5DC5893E3FA3',0);
INSERT INTO "Fitments" VALUES(33,5,6,'Tyres','2024-12-07',1,'came off Brindle, good enough to push it about',NULL,NULL,'',118300000.0,'118 300','km',NULL,NULL,NULL,'01A21435-A939-719E-AD1B-94DA38DD2F56',0);
CREATE TABLE "Gears" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Gears" PRIMARY KEY AUTOINCREMENT,
    "TransmissionId" INTEGER NOT NULL,
    "Ordinal" INTEGER NOT NULL,
    "Name" TEXT NOT NULL,
    "RatioSi" REAL NOT NULL,
    "RatioSource" TEXT NOT NULL,
    "RatioText" TEXT NOT NULL,
    "RatioUnit" TEXT NOT NULL,
    CONSTRAINT "CK_Gears_Name" CHECK (length(trim("Name")) > 0),
    CONSTRAINT "CK_Gears_Ordinal" CHECK ("Ordinal" >= 1),
    CONSTRAINT "CK_Gears_Ratio" CHECK (("RatioSi" IS NULL) + ("RatioUnit" IS NULL) + ("RatioText" IS NULL) + ("RatioSource" IS NULL) IN (0, 4)),
    CONSTRAINT "CK_Gears_RatioSi" CHECK ("RatioSi" BETWEEN 0.3 AND 20.0),
    CONSTRAINT "CK_Gears_RatioSource" CHECK ("RatioSource" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')),
    CONSTRAINT "FK_Gears_Components_TransmissionId" FOREIGN KEY ("TransmissionId") REFERENCES "Components" ("Id")
) STRICT;
INSERT INTO "Gears" VALUES(1,2,1,'1',3.54,'MakersData','3.54','');
INSERT INTO "Gears" VALUES(2,2,2,'2',2.12,'MakersData','2.12','');
INSERT INTO "Gears" VALUES(3,2,3,'3',1.38,'MakersData','1.38','');
INSERT INTO "Gears" VALUES(4,2,4,'4',1.0,'MakersData','1.00','');
INSERT INTO "Gears" VALUES(5,8,1,'1',3.41,'MakersData','3.41','');
INSERT INTO "Gears" VALUES(6,8,2,'2',2.0,'MakersData','2.00','');
INSERT INTO "Gears" VALUES(7,8,3,'3',1.37,'MakersData','1.37','');
INSERT INTO "Gears" VALUES(8,8,4,'4',1.0,'MakersData','1.00','');
INSERT INTO "Gears" VALUES(9,14,1,'1',3.54,'MakersData','3.54','');
INSERT INTO "Gears" VALUES(10,14,2,'2',2.12,'MakersData','2.12','');
INSERT INTO "Gears" VALUES(11,14,3,'3',1.38,'MakersData','1.38','');
INSERT INTO "Gears" VALUES(12,14,4,'4',1.0,'MakersData','1.00','');
INSERT INTO "Gears" VALUES(13,15,1,'1',3.32,'MakersData','3.32','');
INSERT INTO "Gears" VALUES(14,15,2,'2',2.05,'MakersData','2.05','');
INSERT INTO "Gears" VALUES(15,15,3,'3',1.38,'MakersData','1.38','');
INSERT INTO "Gears" VALUES(16,15,4,'4',1.0,'MakersData','1.00','');
INSERT INTO "Gears" VALUES(17,15,5,'5',0.81,'MakersData','0.81','');
INSERT INTO "Gears" VALUES(18,19,1,'1',2.98,'Tag','2.98','');
INSERT INTO "Gears" VALUES(19,19,2,'2',1.94,'Tag','1.94','');
INSERT INTO "Gears" VALUES(20,19,3,'3',1.34,'Tag','1.34','');
INSERT INTO "Gears" VALUES(21,19,4,'4',1.0,'Tag','1.00','');
INSERT INTO "Gears" VALUES(22,23,1,'1',4.05,'MakersData','4.05','');
INSERT INTO "Gears" VALUES(23,23,2,'2',2.22,'MakersData','2.22','');
INSERT INTO "Gears" VALUES(24,23,3,'3',1.42,'MakersData','1.42','');
INSERT INTO "Gears" VALUES(25,23,4,'4',1.0,'MakersData','1.00','');
INSERT INTO "Gears" VALUES(26,31,1,'1',3.5,'OwnersWord','3.5','');
INSERT INTO "Gears" VALUES(27,31,2,'2',2.1,'OwnersWord','2.1','');
INSERT INTO "Gears" VALUES(28,31,3,'3',1.4,'OwnersWord','1.4','');
INSERT INTO "Gears" VALUES(29,31,4,'4',1.0,'OwnersWord','1.0','');
CREATE TABLE "Goals" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Goals" PRIMARY KEY AUTOINCREMENT,
    "VehicleId" INTEGER NOT NULL,
    "Kind" TEXT NOT NULL,
    "Speed" TEXT NULL,
    "EngineSpeed" TEXT NULL,
    "Tolerance" TEXT NULL,
    "Gear" TEXT NULL,
    "SpeedSi" REAL NULL,
    "EngineSpeedSi" REAL NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Goals_cruise" CHECK ("Kind" <> 'cruise' OR ("Speed" IS NOT NULL AND "EngineSpeed" IS NOT NULL AND "Tolerance" IS NOT NULL AND "Gear" IS NOT NULL AND "SpeedSi" IS NOT NULL AND "EngineSpeedSi" IS NOT NULL)),
    CONSTRAINT "CK_Goals_EngineSpeedSi" CHECK ("EngineSpeedSi" > 0 AND "EngineSpeedSi" < 1000),
    CONSTRAINT "CK_Goals_Kind" CHECK ("Kind" IN ('cruise')),
    CONSTRAINT "CK_Goals_SpeedSi" CHECK ("SpeedSi" > 0 AND "SpeedSi" < 1000),
    CONSTRAINT "FK_Goals_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO "Goals" VALUES(1,1,'cruise','100 km/h','2500 rpm','100 rpm','',2.77777777777777785668e+01,4.16666666666666642973e+01,'01A21435-98D3-72E7-808C-9969DBD13553',0);
INSERT INTO "Goals" VALUES(2,2,'cruise','60 mph','2550 rpm','','',26.8224,42.5,'01A21435-A357-7FEE-A6C5-D0B14B6BA32A',0);
INSERT INTO "Goals" VALUES(3,3,'cruise','70 mph','2900 rpm','','',31.2928,4.83333333333333357026e+01,'01A21435-A44D-7C25-B263-A53AD6DCF51B',0);
INSERT INTO "Goals" VALUES(4,4,'cruise','100 km/h','3000 rpm','150 rpm','',2.77777777777777785668e+01,50.0,'01A21435-A55A-70B2-9D47-21A56C7E7587',0);
INSERT INTO "Goals" VALUES(5,5,'cruise','90 km/h','2700 rpm','at most','',25.0,45.0,'01A21435-A63D-7BA7-AD9C-44F9DC9DD933',0);
INSERT INTO "Goals" VALUES(6,6,'cruise','95 km/h','2600 rpm','','',2.63888888888888892845e+01,4.33333333333333357026e+01,'01A21435-A7B2-768A-8203-975E2BBA676F',0);
CREATE TABLE "Readings" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Readings" PRIMARY KEY AUTOINCREMENT,
    "SessionId" INTEGER NOT NULL,
    "Ordinal" INTEGER NOT NULL,
    "Text" TEXT NOT NULL,
    CONSTRAINT "CK_Readings_Ordinal" CHECK ("Ordinal" >= 1),
    CONSTRAINT "CK_Readings_Text" CHECK (length(trim("Text")) > 0),
    CONSTRAINT "FK_Readings_Sessions_SessionId" FOREIGN KEY ("SessionId") REFERENCES "Sessions" ("Id")
) STRICT;
INSERT INTO "Readings" VALUES(1,1,1,'1:2238mm');
INSERT INTO "Readings" VALUES(2,1,2,'3:6 715 mm');
INSERT INTO "Readings" VALUES(3,1,3,'5:11.19 m');
INSERT INTO "Readings" VALUES(4,2,1,'10:23.7');
INSERT INTO "Readings" VALUES(5,2,2,'10:23 3/4');
INSERT INTO "Readings" VALUES(6,2,3,'10:23 3/4');
INSERT INTO "Readings" VALUES(7,3,1,'1:2028mm');
INSERT INTO "Readings" VALUES(8,3,2,'2:4057mm');
INSERT INTO "Readings" VALUES(9,4,1,'10:39');
INSERT INTO "Readings" VALUES(10,4,2,'20:78');
INSERT INTO "Readings" VALUES(11,5,1,'2:12 ft 8 in');
INSERT INTO "Readings" VALUES(12,5,2,'4:25 ft 4 in');
INSERT INTO "Readings" VALUES(13,5,3,'6:38 ft');
INSERT INTO "Readings" VALUES(14,6,1,'1:1936mm');
INSERT INTO "Readings" VALUES(15,6,2,'3:5807 mm');
INSERT INTO "Readings" VALUES(16,6,3,'5:9.68 m');
INSERT INTO "Readings" VALUES(17,7,1,'3:5 1/4');
INSERT INTO "Readings" VALUES(18,8,1,'1:1876mm');
INSERT INTO "Readings" VALUES(19,8,2,'2:3751mm');
INSERT INTO "Readings" VALUES(20,8,3,'4:7.503 m');
INSERT INTO "Readings" VALUES(21,9,1,'1:2531mm');
INSERT INTO "Readings" VALUES(22,9,2,'3:7596mm');
INSERT INTO "Readings" VALUES(23,10,1,'10:20 1/2');
INSERT INTO "Readings" VALUES(24,10,2,'20:41');
CREATE TABLE "Sessions" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Sessions" PRIMARY KEY AUTOINCREMENT,
    "Date" TEXT NOT NULL,
    "Helper" TEXT NOT NULL,
    "Conditions" TEXT NOT NULL,
    "Notes" TEXT NOT NULL,
    "ComponentId" INTEGER NOT NULL,
    "VehicleId" INTEGER NULL,
    "Method" TEXT NOT NULL,
    "Loaded" INTEGER NULL,
    "Construction" TEXT NULL,
    "Tape" TEXT NULL,
    "Align" TEXT NULL,
    "Pressure" TEXT NULL,
    "Wheels" TEXT NULL,
    "ReadTo" TEXT NULL,
    "Hub" TEXT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Sessions_Construction" CHECK ("Construction" IN ('Radial', 'Bias')),
    CONSTRAINT "CK_Sessions_Date" CHECK ("Date" IS date("Date")),
    CONSTRAINT "CK_Sessions_Method" CHECK ("Method" IN ('turn count', 'roll-out')),
    CONSTRAINT "CK_Sessions_roll-out" CHECK ("Method" <> 'roll-out' OR ("Loaded" IS NOT NULL AND "Construction" IS NOT NULL AND "Tape" IS NOT NULL AND "Align" IS NOT NULL AND "Pressure" IS NOT NULL)),
    CONSTRAINT "CK_Sessions_turn_count" CHECK ("Method" <> 'turn count' OR ("Wheels" IS NOT NULL AND "ReadTo" IS NOT NULL AND "Align" IS NOT NULL AND "Hub" IS NOT NULL)),
    CONSTRAINT "CK_Sessions_Wheels" CHECK ("Wheels" IN ('OneHeld', 'Together', 'Each')),
    CONSTRAINT "FK_Sessions_Components_ComponentId" FOREIGN KEY ("ComponentId") REFERENCES "Components" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Sessions_Vehicles_VehicleId" FOREIGN KEY ("VehicleId") REFERENCES "Vehicles" ("Id") ON DELETE RESTRICT
) STRICT;
INSERT INTO "Sessions" VALUES(1,'2024-06-01','Piet Arlow','shed floor, level, driver aboard','',6,1,'roll-out',1,'Radial','2 mm','0.01','2.4 bar',NULL,NULL,NULL,'01A21435-A20B-75A4-8785-48E7EF2C3999',0);
INSERT INTO "Sessions" VALUES(2,'2024-10-26','Piet Arlow','on stands, left wheel held, chalk on the flange','Done because the engine was far too busy on the first drive.',4,1,'turn count',NULL,NULL,NULL,'0.02',NULL,'OneHeld','0.25','','01A21435-A2E8-770A-8C99-C1CAB2EF4DC7',0);
INSERT INTO "Sessions" VALUES(3,'2024-04-06','','loose wheel along the bench rail','',12,NULL,'roll-out',0,'Bias','2 mm','0.01','26 psi',NULL,NULL,NULL,'01A21435-A3F4-7586-9E0E-D6BDC200C924',0);
INSERT INTO "Sessions" VALUES(4,'2024-06-16','Rufus Keel','rolled along the yard, both wheels on the ground','',11,2,'turn count',NULL,NULL,NULL,'0.02',NULL,'Together','0.25','','01A21435-A412-7153-A2E5-F5157A691D34',0);
INSERT INTO "Sessions" VALUES(5,'2024-06-16','Rufus Keel','same run along the yard','',12,2,'roll-out',1,'Bias','2 mm','0.01','26 psi',NULL,NULL,NULL,'01A21435-A41C-7DFB-A76B-555F489569ED',0);
INSERT INTO "Sessions" VALUES(6,'2024-05-04','Dorrit Ames','level car park, half a tank, driver aboard','',17,3,'roll-out',1,'Radial','2 mm','0.01','2.2 bar',NULL,NULL,NULL,'01A21435-A528-7871-9244-B498115AB9E6',0);
INSERT INTO "Sessions" VALUES(7,'2024-11-09','','alone, three turns before the light went','',20,4,'turn count',NULL,NULL,NULL,'0.02',NULL,'OneHeld','0.25','','01A21435-A5FB-773C-AF3E-A418718A0E18',0);
INSERT INTO "Sessions" VALUES(8,'2024-11-16','Bastian Orme','shed floor, shell without glass yet','',21,4,'roll-out',1,'Radial','2 mm','0.01','2.0 bar',NULL,NULL,NULL,'01A21435-A614-7628-B0EF-048EB9112EFB',0);
INSERT INTO "Sessions" VALUES(9,'2024-05-11','','one loose wheel along the shed floor','',29,NULL,'roll-out',0,'Radial','2 mm','0.01','3.5 bar',NULL,NULL,NULL,'01A21435-A75A-737C-8CE1-003568D86139',0);
INSERT INTO "Sessions" VALUES(10,'2024-10-06','Ilse Marrick','transfer case in two-wheel drive, front on stands','',28,5,'turn count',NULL,NULL,NULL,'0.02',NULL,'OneHeld','0.25','','01A21435-A79E-75CC-949A-823ED4E39D6A',0);
CREATE TABLE "Vehicles" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Vehicles" PRIMARY KEY AUTOINCREMENT,
    "Name" TEXT NOT NULL,
    "State" TEXT NOT NULL,
    "Owner" TEXT NOT NULL,
    "ChassisNumber" TEXT NOT NULL,
    "Registration" TEXT NOT NULL,
    "DrivesInFront" INTEGER NOT NULL,
    "OdometerUnit" TEXT NOT NULL,
    "Notes" TEXT NOT NULL,
    "NameKey" TEXT NOT NULL,
    "Uid" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "CK_Vehicles_Name" CHECK (length(trim("Name")) > 0),
    CONSTRAINT "CK_Vehicles_NameKey" CHECK (length(trim("NameKey")) > 0),
    CONSTRAINT "CK_Vehicles_OdometerUnit" CHECK ("OdometerUnit" IN ('Kilometres', 'Miles')),
    CONSTRAINT "CK_Vehicles_State" CHECK ("State" IN ('Planned', 'InBuild', 'OnTheRoad', 'LaidUp', 'HandedOver'))
) STRICT;
INSERT INTO "Vehicles" VALUES(1,'Brindle','InBuild','Agnes Thorley','WX-PU-20417','BT 417',0,'Kilometres','Half-ton pickup, bare frame when it came. Wants to cross the county without shouting.','BRINDLE','01A21435-92B9-7E30-88CD-DEA0A1A784BE',0);
INSERT INTO "Vehicles" VALUES(2,'Ottery','HandedOver','Rufus Keel','OT 5529','KEE 55',0,'Miles','Open tourer. Handed over with its sheet in September 2024.','OTTERY','01A21435-A349-79AF-BB98-5DF2723DBA3D',0);
INSERT INTO "Vehicles" VALUES(3,'Tansy','OnTheRoad','Dorrit Ames','TN-88-3105','D 3105 A',0,'Miles','Estate, daily use.','TANSY','01A21435-A446-741A-98B6-74CDE6280356',0);
INSERT INTO "Vehicles" VALUES(4,'Quillon','InBuild','Bastian Orme','QL 70 0093','',0,'Kilometres','Fastback coupe, shell painted, going together.','QUILLON','01A21435-A550-7599-BBAA-9FEDB0310405',0);
INSERT INTO "Vehicles" VALUES(5,'Haldor','InBuild','Ilse Marrick','HD4-1177-L','IM 1177',0,'Kilometres','Long-wheelbase 4×4, carries the mowers.','HALDOR','01A21435-A62C-7425-82ED-699467A96C64',0);
INSERT INTO "Vehicles" VALUES(6,'Pellow','Planned','the shop','not found yet','',0,'Kilometres','Panel van, for the shop itself once the others are out.','PELLOW','01A21435-A7A6-7391-95CE-EDD0D5963E6C',0);
CREATE TABLE "__EFMigrationsHistory" (
    "MigrationId" TEXT NOT NULL CONSTRAINT "PK___EFMigrationsHistory" PRIMARY KEY,
    "ProductVersion" TEXT NOT NULL
) STRICT;
INSERT INTO "__EFMigrationsHistory" VALUES('20261125180654_FirstRecord','10.0.15');
CREATE TABLE "__EFMigrationsLock" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK___EFMigrationsLock" PRIMARY KEY,
    "Timestamp" TEXT NOT NULL
);
CREATE UNIQUE INDEX "IX_Components_Uid" ON "Components" ("Uid");
CREATE INDEX "IX_Fitments_ComponentId_FromDate" ON "Fitments" ("ComponentId", "FromDate");
CREATE UNIQUE INDEX "IX_Fitments_OnePartAtATime" ON "Fitments" ("VehicleId", "Position") WHERE "ToDate" IS NULL;
CREATE UNIQUE INDEX "IX_Fitments_OnePlaceAtATime" ON "Fitments" ("ComponentId") WHERE "ToDate" IS NULL;
CREATE UNIQUE INDEX "IX_Fitments_Uid" ON "Fitments" ("Uid");
CREATE INDEX "IX_Fitments_VehicleId_FromDate" ON "Fitments" ("VehicleId", "FromDate");
CREATE UNIQUE INDEX "IX_Gears_TransmissionId_Ordinal" ON "Gears" ("TransmissionId", "Ordinal");
CREATE UNIQUE INDEX "IX_Goals_Uid" ON "Goals" ("Uid");
CREATE INDEX "IX_Goals_VehicleId" ON "Goals" ("VehicleId");
CREATE UNIQUE INDEX "IX_Readings_SessionId_Ordinal" ON "Readings" ("SessionId", "Ordinal");
CREATE INDEX "IX_Sessions_ComponentId_Date" ON "Sessions" ("ComponentId", "Date");
CREATE UNIQUE INDEX "IX_Sessions_Uid" ON "Sessions" ("Uid");
CREATE INDEX "IX_Sessions_VehicleId_Date" ON "Sessions" ("VehicleId", "Date");
CREATE UNIQUE INDEX "IX_Vehicles_NameKey" ON "Vehicles" ("NameKey");
CREATE UNIQUE INDEX "IX_Vehicles_Uid" ON "Vehicles" ("Uid");
CREATE TRIGGER "Fitments_Insert_NoOverlap" BEFORE INSERT ON "Fitments"
WHEN EXISTS (
    SELECT 1 FROM "Fitments" AS other
    WHERE other."Id" IS NOT NEW."Id"
      AND (other."ComponentId" = NEW."ComponentId" OR (other."VehicleId" = NEW."VehicleId" AND other."Position" = NEW."Position"))
      AND (NEW."ToDate" IS NULL OR (other."FromDate", other."FromOrder") < (NEW."ToDate", NEW."ToOrder"))
      AND (other."ToDate" IS NULL OR (NEW."FromDate", NEW."FromOrder") < (other."ToDate", other."ToOrder")))
BEGIN
    SELECT RAISE(ABORT, 'Nothing was changed: the part or its place is taken on these days by another fitment.');
END;
CREATE TRIGGER "Fitments_Update_NoOverlap" BEFORE UPDATE ON "Fitments"
WHEN EXISTS (
    SELECT 1 FROM "Fitments" AS other
    WHERE other."Id" IS NOT NEW."Id"
      AND (other."ComponentId" = NEW."ComponentId" OR (other."VehicleId" = NEW."VehicleId" AND other."Position" = NEW."Position"))
      AND (NEW."ToDate" IS NULL OR (other."FromDate", other."FromOrder") < (NEW."ToDate", NEW."ToOrder"))
      AND (other."ToDate" IS NULL OR (NEW."FromDate", NEW."FromOrder") < (other."ToDate", other."ToOrder")))
BEGIN
    SELECT RAISE(ABORT, 'Nothing was changed: the part or its place is taken on these days by another fitment.');
END;
DELETE FROM "sqlite_sequence";
INSERT INTO "sqlite_sequence" VALUES('Vehicles',6);
INSERT INTO "sqlite_sequence" VALUES('Goals',6);
INSERT INTO "sqlite_sequence" VALUES('Components',32);
INSERT INTO "sqlite_sequence" VALUES('Gears',29);
INSERT INTO "sqlite_sequence" VALUES('Fitments',33);
INSERT INTO "sqlite_sequence" VALUES('Sessions',10);
INSERT INTO "sqlite_sequence" VALUES('Readings',24);
COMMIT;